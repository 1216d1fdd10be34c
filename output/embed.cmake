# embed_files(STEM "name=path"...): writes STEM.S and STEM.cpp, which compile the files into the
# program, and sets EMBEDDED_SOURCES. The names come out in the order of their bytes.
function(embed_files stem)
  list(SORT ARGN)
  set(assembly "    .section .rodata\n")
  set(declarations "")
  set(entries "")
  set(index 0)
  set(inputs "")
  foreach(pair ${ARGN})
    string(REGEX MATCH "^([^=]+)=(.+)$" _ "${pair}")
    set(name ${CMAKE_MATCH_1})
    set(path ${CMAKE_MATCH_2})
    if(NOT EXISTS ${path})
      message(FATAL_ERROR "file to embed is missing: ${path}")
    endif()
    list(APPEND inputs ${path})
    string(APPEND assembly "    .balign 16\n    .global embedded_${index}\nembedded_${index}:\n"
      "    .incbin \"${path}\"\n    .global embedded_${index}_end\nembedded_${index}_end:\n"
      "    .byte 0\n")
    string(APPEND declarations
      "extern const char embedded_${index}[];\nextern const char embedded_${index}_end[];\n")
    string(APPEND entries "    file(\"${name}\", embedded_${index}, embedded_${index}_end),\n")
    math(EXPR index "${index} + 1")
  endforeach()
  string(APPEND assembly "    .section .note.GNU-stack,\"\",%progbits\n")
  file(CONFIGURE OUTPUT ${stem}.S CONTENT "${assembly}" @ONLY)
  file(CONFIGURE OUTPUT ${stem}.cpp @ONLY CONTENT
"#include \"output/embedded.h\"

#include <array>
#include <stdexcept>
#include <string>

extern \"C\" {
${declarations}}

namespace output {
namespace {

EmbeddedFile file(std::string_view name, const char* begin, const char* end) {
  return {name, {begin, static_cast<std::size_t>(end - begin)}};
}

}  // namespace

std::span<const EmbeddedFile> embedded_files() {
  static const std::array<EmbeddedFile, ${index}> files{
${entries}  };
  return files;
}

std::string_view embedded(std::string_view name) {
  for (const EmbeddedFile& entry : embedded_files()) {
    if (entry.name == name) return entry.bytes;
  }
  throw std::out_of_range(\"no embedded file \" + std::string(name));
}

}  // namespace output
")
  set_source_files_properties(${stem}.S PROPERTIES OBJECT_DEPENDS "${inputs}")
  set(EMBEDDED_SOURCES ${stem}.S ${stem}.cpp PARENT_SCOPE)
endfunction()
