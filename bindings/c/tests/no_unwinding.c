/* On Linux the compiler's own routines, which are in the library, name the hook by which a panic unwinds. A library built
 * to abort never calls it; whoever links it without Rust's standard library gives it a body. */

void rust_eh_personality(void);

void rust_eh_personality(void) {}
