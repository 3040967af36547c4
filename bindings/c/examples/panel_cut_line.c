/* Half a skirt front with one dart, drafted from measures, and the line to cut it along. The measures are invented.
 *
 * cc panel_cut_line.c -lrecloth -lm */

#include <stdio.h>
#include <stdlib.h>

#include "recloth.h"

static const char MEASURES[] =
    "{\"skirt_panel\": {\"name\": \"front\", \"panel_width\": 242, \"waist\": 190, \"hip\": 250, \"hip_depth\": 200,"
    " \"length\": 600, \"hem_width\": 290, \"darts\": 1, \"largest_intake\": 30, \"dart_length\": 110,"
    " \"side_rise\": 12, \"centre\": \"fold\", \"allowances\": {\"seam\": 15, \"hem\": 40}}}";

/* Prints why a call failed; for what it returns the program may end with. */
static int failed(const recloth_error_t *error, char *message) {
  char text[160];
  recloth_error_text(error, text, sizeof text);
  fprintf(stderr, "%s%s%s\n", text, message ? ": " : "", message ? message : "");
  recloth_text_free(message);
  return EXIT_FAILURE;
}

int main(void) {
  recloth_piece *front = NULL;
  recloth_error_t error;
  char *message = NULL;
  double *points;
  size_t count, i;

  if (recloth_draft(MEASURES, &front, 1, &count, NULL, &message, &error) != RECLOTH_STATUS_OK) {
    return failed(&error, message);
  }
  /* How many points there are is asked first; then they are fetched. */
  if (recloth_piece_cut_line(front, 0.1, NULL, 0, &count, &error) != RECLOTH_STATUS_ROOM) {
    recloth_piece_free(front);
    return failed(&error, NULL);
  }
  count = (size_t)error.min;
  points = (double *)malloc(2 * count * sizeof *points);
  if (points == NULL || recloth_piece_cut_line(front, 0.1, points, count, &count, &error) != RECLOTH_STATUS_OK) {
    free(points);
    recloth_piece_free(front);
    return EXIT_FAILURE;
  }
  printf("%lu points, x and y in mm:\n", (unsigned long)count);
  for (i = 0; i < count; i++) printf("%9.2f %9.2f\n", points[2 * i], points[2 * i + 1]);
  free(points);
  recloth_piece_free(front);
  return EXIT_SUCCESS;
}
