/* Prints what C answers to each job of lays named, as the other doors do: a line a job, and for cloth by the length a line a
 * number of threads. What a file is, its name begins with: fit- or strip-. */

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "recloth.h"

static char *read_all(const char *path) {
  FILE *file = fopen(path, "rb");
  char *text = (char *)calloc(1, 1 << 20);
  if (file == NULL || text == NULL || fread(text, 1, (1 << 20) - 1, file) == 0) {
    fprintf(stderr, "%s cannot be read\n", path);
    exit(EXIT_FAILURE);
  }
  fclose(file);
  return text;
}

static void answer(recloth_status status, const recloth_error_t *error, char *out) {
  if (status == RECLOTH_STATUS_OK) {
    printf("%s\n", out);
  } else {
    printf("%d %s\n", (int)status, error->argument);
  }
  recloth_text_free(out);
}

int main(int count, char **paths) {
  static const char threads[] = {'1', '2', '7'};
  int index;
  size_t each;
  for (index = 1; index < count; index++) {
    const char *slash = strrchr(paths[index], '/'), *name = slash == NULL ? paths[index] : slash + 1;
    int length = (int)strcspn(name, ".");
    char *job = read_all(paths[index]), *out = NULL;
    recloth_error_t error;
    if (strncmp(name, "fit-", 4) == 0) {
      recloth_status status = recloth_fit(job, NULL, NULL, &out, NULL, &error);
      printf("fit\t%.*s\t", length, name);
      answer(status, &error, out);
    } else {
      char *digit = strstr(job, "\"threads\": 0");
      if (digit == NULL) return EXIT_FAILURE;
      digit += strlen("\"threads\": ");
      for (each = 0; each < sizeof threads; each++) {
        recloth_status status;
        *digit = threads[each];
        out = NULL;
        status = recloth_strip(job, NULL, NULL, &out, NULL, &error);
        printf("strip\t%.*s-%c\t", length, name, threads[each]);
        answer(status, &error, out);
      }
    }
    free(job);
  }
  return EXIT_SUCCESS;
}
