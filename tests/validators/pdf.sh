#!/usr/bin/env bash
# pdf.sh FILE...: is each file a sound PDF/A-1b file that others can read?
# One line a file; exit status 0 when all are, 1 when one is not, 64 usage, 69 a tool is missing.
set -u -o pipefail
export LC_ALL=C.UTF-8
here=$(dirname -- "$0")

if [ $# -eq 0 ]; then
  echo "usage: pdf.sh FILE..." >&2
  exit 64
fi
for tool in qpdf pdffonts pdftotext pdftoppm java awk python3; do
  command -v "$tool" > /dev/null || { echo "pdf.sh: $tool is not installed" >&2; exit 69; }
done
jars=/usr/share/java
class_path=
for jar in preflight pdfbox2 fontbox2 xmpbox jaxb-api javax.activation commons-logging; do
  [ -r "$jars/$jar.jar" ] || { echo "pdf.sh: $jars/$jar.jar is not installed" >&2; exit 69; }
  class_path=$class_path:$jars/$jar.jar
done

work=$(mktemp -d) || exit 69
trap 'rm -rf "$work"' EXIT

# Preflight names files without their folder: numbered links keep them apart. Its exit status is
# 0 for invalid files too, so the report is read. One virtual machine for all files.
number=0
for file in "$@"; do
  number=$((number + 1))
  ln -s "$(realpath -- "$file")" "$work/$number.pdf"
  echo "$work/$number.pdf" >> "$work/list"
done
java -XX:TieredStopAtLevel=1 -cp "$class_path" org.apache.pdfbox.preflight.Validator_A1b \
  xml group "$work/list" > "$work/java" 2>&1 &
preflight=$!

# Runs a command; its failure or any word of it on standard error is a fault.
quiet() {
  local name=$1
  shift
  "$@" > "$work/out" 2> "$work/err" || faults+=("$name failed")
  [ -s "$work/err" ] && faults+=("$name: $(head -n 1 "$work/err")")
}

check() {
  local file=$1
  [ "$(head -c 8 -- "$file" | tr -d '\0')" = "%PDF-1.4" ] || faults+=("header is not %PDF-1.4")
  grep -aq '^/Subtype /XML' "$file" || faults+=("no metadata of subtype XML")
  grep -aq '<pdfaid:part>1</pdfaid:part><pdfaid:conformance>B<' "$file" ||
    faults+=("no plain XMP that claims PDF/A-1b")
  quiet "qpdf" qpdf --check "$file"
  grep -q WARNING "$work/out" && faults+=("qpdf warns")
  while read -r fault; do faults+=("${fault#"$file: "}"); done < <(python3 "$here/archive.py" "$file")
  quiet "pdffonts" pdffonts "$file"
  awk 'NR > 2 { rows++; if ($(NF-4) != "yes" || $(NF-3) != "yes" || $(NF-2) != "yes") bad++ }
       END { exit !(rows > 0 && bad == 0) }' "$work/out" ||
    faults+=("a font is not embedded, not a subset or without Unicode")
  quiet "pdftotext" pdftotext -raw "$file" "$work/text"
  grep -q '[^[:space:]]' "$work/text" 2> /dev/null || faults+=("no text in it")
  quiet "pdftoppm" pdftoppm -r 40 "$file" "$work/page"
  ls "$work"/page* > /dev/null 2>&1 || faults+=("no page in it")
  rm -f "$work"/page* "$work/text"
}

number=0
for file in "$@"; do
  number=$((number + 1))
  faults=()
  if [ -f "$file" ]; then check "$file"; else faults+=("no such file"); fi
  printf '%s\n' "${faults[@]}" > "$work/$number.faults"
done

wait "$preflight"
status=0
number=0
for file in "$@"; do
  number=$((number + 1))
  verdict=$(awk -v "name=\"$number.pdf\"" '
    index($0, "<preflight name=") { inside = index($0, name) > 0 }
    inside && /<isValid type="PDF\/A1-b">true</ { print "valid"; found = 1 }
    inside && /<details>/ { gsub(/<[^>]*>|^ +/, ""); print; found = 1; exit }
    END { if (!found) print "no verdict" }' "$work/list.preflight.xml" 2> /dev/null)
  [ "$verdict" = valid ] || echo "preflight: ${verdict:-no verdict}" >> "$work/$number.faults"
  fault=$(grep -v '^$' "$work/$number.faults" | paste -s -d '|' | sed 's/|/ | /g')
  if [ -n "$fault" ]; then
    echo "BAD  $file: $fault"
    status=1
  else
    echo "good $file"
  fi
done
exit $status
