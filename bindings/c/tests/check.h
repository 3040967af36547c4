/* What a test counts: a check that holds, or one that does not, told with its place. */
#ifndef CHECK_H
#define CHECK_H

#include <stdio.h>

static int passed, failed;

#define CHECK(what)                                             \
  do {                                                          \
    if (what) {                                                 \
      passed++;                                                 \
    } else {                                                    \
      failed++;                                                 \
      printf("%s:%d: %s is false\n", __FILE__, __LINE__, #what); \
    }                                                           \
  } while (0)

#endif
