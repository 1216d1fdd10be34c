/// What jemalloc reads when the program starts: one pool of memory a core, shared by the threads
/// that run on it. A pool a thread would keep what its largest request took for nothing.
extern "C" {
extern const char* const malloc_conf;
const char* const malloc_conf = "percpu_arena:percpu";
}
