/* How much cloth 900 mm wide a pair of fronts and a pocket take: pieces made from their corners, laid as short as is found in
 * some two seconds. The measures are invented.
 *
 * cc lay_on_cloth.c -lrecloth -lm */

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "recloth.h"

static const double FRONT[] = {0, 0, 280, 0, 280, 420, 190, 640, 60, 680, 0, 560};
static const double POCKET[] = {0, 0, 130, 0, 130, 120, 65, 160, 0, 120};
static const double ALLOWANCES[] = {10, 10, 10, 10, 10, 10};

/* Prints why a call failed; for what it returns the program may end with. */
static int failed(const recloth_error_t *error, char *message) {
  char text[160];
  recloth_error_text(error, text, sizeof text);
  fprintf(stderr, "%s%s%s\n", text, message ? ": " : "", message ? message : "");
  recloth_text_free(message);
  return EXIT_FAILURE;
}

/* The part as JSON that a piece of these corners is laid as. */
static char *part(const char *name, const double *corners, size_t count, recloth_error_t *error) {
  recloth_piece *piece = NULL;
  char *json = NULL;
  if (recloth_piece_from_edges(name, corners, NULL, ALLOWANCES, NULL, NULL, NULL, count, &piece, error) == RECLOTH_STATUS_OK) {
    recloth_piece_part(piece, 0.05, &json, error);
  }
  recloth_piece_free(piece);
  return json;
}

/* Told many times a second; what it returns would stop the search. */
static int progress(double done, double best, void *user) {
  double *least = (double *)user;
  if (best < *least) fprintf(stderr, "%3.0f %%: %.1f mm\n", 100 * done, best);
  if (best < *least) *least = best;
  return 0;
}

int main(void) {
  recloth_error_t error;
  double least = 1e9, length;
  size_t wrong = 0;
  char *front = part("front", FRONT, 6, &error), *pocket = part("pocket", POCKET, 5, &error);
  char *job, *lay = NULL, *message = NULL;
  const char *frame = "{\"parts\": [%s, %s, %s], \"strip\": {\"width\": 900}, \"options\": {\"budget\": 2000000}}";

  if (front == NULL || pocket == NULL) {
    recloth_text_free(front);
    recloth_text_free(pocket);
    return failed(&error, NULL);
  }
  job = (char *)malloc(strlen(frame) + 2 * strlen(front) + strlen(pocket));
  if (job != NULL) sprintf(job, frame, front, front, pocket);
  recloth_text_free(front);
  recloth_text_free(pocket);
  if (job == NULL) return EXIT_FAILURE;
  if (recloth_strip(job, progress, &least, &lay, &message, &error) != RECLOTH_STATUS_OK) {
    free(job);
    return failed(&error, message);
  }
  free(job);
  length = strtod(strstr(lay, "\"length\":") + strlen("\"length\":"), NULL);
  printf("%.1f mm of cloth 900 mm wide\n", length);
  if (recloth_check_lay(lay, &wrong, NULL, &message, &error) != RECLOTH_STATUS_OK) {
    recloth_text_free(lay);
    return failed(&error, message);
  }
  printf("%s\n", wrong == 0 ? "proved" : "wrong");
  recloth_text_free(lay);
  return EXIT_SUCCESS;
}
