/* How deep two pockets may be that lie beside a waistband on a sleeve opened out: a function of ours makes the parts of each
 * depth that is tried. The measures are invented.
 *
 * cc deepest_pockets.c -lrecloth -lm */

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "recloth.h"

#define SLEEVE "[{\"x\": 0, \"y\": 0}, {\"x\": 230, \"y\": 0}, {\"x\": 230, \"y\": 420}, {\"x\": 0, \"y\": 420}]"
#define BAND "[{\"x\": 0, \"y\": 0}, {\"x\": 60, \"y\": 0}, {\"x\": 60, \"y\": 400}, {\"x\": 0, \"y\": 400}]"

/* The parts of a depth; they are read before the next are asked for. What it returns would end the search. */
static int parts_at(double depth, const char **parts, void *user) {
  char *text = (char *)user;
  sprintf(text,
          "[{\"name\": \"band\", \"outline\": " BAND "}, {\"name\": \"pocket\", \"as_drawn\": 2, \"outline\": "
          "[{\"x\": 0, \"y\": 0}, {\"x\": 150, \"y\": 0}, {\"x\": 150, \"y\": %.2f}, {\"x\": 0, \"y\": %.2f}]}]",
          depth, depth);
  *parts = text;
  return 0;
}

int main(void) {
  static const char job[] = "{\"values\": {\"low\": 100, \"high\": 300, \"step\": 2.5},"
                            " \"panels\": [{\"name\": \"sleeve\", \"outline\": " SLEEVE "}],"
                            " \"options\": {\"budget\": 20000000}}";
  recloth_error_t error;
  size_t wrong = 0;
  char parts[600], *found = NULL, *message = NULL;

  if (recloth_largest(job, parts_at, NULL, parts, &found, &message, &error) != RECLOTH_STATUS_OK ||
      recloth_check_lay(found, &wrong, NULL, &message, &error) != RECLOTH_STATUS_OK) {
    char text[160];
    recloth_error_text(&error, text, sizeof text);
    fprintf(stderr, "%s%s%s\n", text, message ? ": " : "", message ? message : "");
    recloth_text_free(message);
    recloth_text_free(found);
    return EXIT_FAILURE;
  }
  /* Above each other they have 420 between them. */
  printf("%.1f mm deep\n%s\n", strtod(strstr(found, "\"value\":") + strlen("\"value\":"), NULL), wrong == 0 ? "proved" : "wrong");
  recloth_text_free(found);
  return EXIT_SUCCESS;
}
