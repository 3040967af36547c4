/* Cut lines by arrays and plans by strings, as a C program sees them. Nothing but the error, and of a
 * plan the message, is written when a call fails. Measures are invented. */

#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "check.h"
#include "recloth.h"

/* Area of a polygon: x and y in turn. */
static double area(const double *points, size_t count) {
  double sum = 0;
  size_t i;
  for (i = 0; i < count; i++) {
    const double *a = points + 2 * i, *b = points + 2 * ((i + 1) % count);
    sum += a[0] * b[1] - b[0] * a[1];
  }
  return sum / 2;
}

static double smallest(const double *points, size_t count, int axis) {
  double least = INFINITY;
  size_t i;
  for (i = 0; i < count; i++) least = fmin(least, points[2 * i + axis]);
  return least;
}

static int near(double a, double b) { return fabs(a - b) < 1e-9; }

static const double STRIP[] = {0, 0, 300, 0, 300, 50, 0, 50};

static void strips(void) {
  double allowances[] = {10, 10, 10, 10};
  double out[64];
  size_t count = 77, i;
  recloth_error_t error;
  for (i = 0; i < 64; i++) out[i] = -77;
  CHECK(recloth_cut_line(STRIP, NULL, allowances, NULL, NULL, 4, 0.1, NULL, 0, &count, &error) ==
        RECLOTH_STATUS_ROOM);
  CHECK(strcmp(error.argument, "out") == 0 && error.min >= 4 && error.min <= 32 && count == 77);
  CHECK(recloth_cut_line(STRIP, NULL, allowances, NULL, NULL, 4, 0.1, out, (size_t)error.min - 1, &count, NULL) ==
        RECLOTH_STATUS_ROOM);
  CHECK(out[0] == -77 && count == 77);
  CHECK(recloth_cut_line(STRIP, NULL, allowances, NULL, NULL, 4, 0.1, out, (size_t)error.min, &count, NULL) ==
        RECLOTH_STATUS_OK);
  /* 10 mm on every side: 320 by 70. */
  CHECK(count == (size_t)error.min && near(area(out, count), 320 * 70));
  CHECK(out[2 * count] == -77);
  /* Each its own: 40 at the bottom, nothing at the top; the end is cut already. */
  {
    int32_t corners[] = {RECLOTH_CORNER_MIRRORED_ON_THIS, RECLOTH_CORNER_SQUARED_TO_THIS,
                         RECLOTH_CORNER_POINTED, RECLOTH_CORNER_MIRRORED_ON_NEXT};
    int32_t drawn[] = {RECLOTH_DRAWN_SEAM, RECLOTH_DRAWN_CUT, RECLOTH_DRAWN_SEAM, RECLOTH_DRAWN_SEAM};
    double each[] = {40, 10, 0, 15};
    CHECK(recloth_cut_line(STRIP, NULL, each, corners, drawn, 4, 0.1, out, 32, &count, &error) ==
          RECLOTH_STATUS_OK);
    CHECK(near(area(out, count), (300 + 15) * (50 + 40)));
    CHECK(smallest(out, count, 0) == -15 && smallest(out, count, 1) == -40);
  }
}

/* A disc of two half circles, radius 100, cut at 110. */
static void arcs(void) {
  const double points[] = {-100, 0, 100, 0};
  const double bulges[] = {1, 1}, back[] = {-1, -1};
  const double allowances[] = {10, 10};
  const double disc = 3.14159265358979323846 * 110 * 110;
  double out[2000];
  size_t count = 0, i;
  CHECK(recloth_cut_line(points, bulges, allowances, NULL, NULL, 2, 0.01, out, 1000, &count, NULL) ==
        RECLOTH_STATUS_OK);
  CHECK(count > 20 && area(out, count) < disc && area(out, count) > disc * (1 - 1e-3));
  for (i = 0; i < count; i++) {
    if (fabs(hypot(out[2 * i], out[2 * i + 1]) - 110) > 1e-9) break;
  }
  CHECK(i == count);
  /* Clockwise it is turned round. */
  CHECK(recloth_cut_line(points, back, allowances, NULL, NULL, 2, 0.01, out, 1000, &count, NULL) ==
        RECLOTH_STATUS_OK);
  CHECK(area(out, count) > disc * (1 - 1e-3));
}

static void wrong_pieces(void) {
  double allowances[] = {10, 10, 10, 10};
  const double bow[] = {0, 0, 9, 9, 9, 0, 0, 8};
  const int32_t choices[] = {0, 0, 9, 0};
  double points[8];
  double out[64] = {-77};
  char text[160];
  size_t count = 77;
  recloth_error_t error;
#define CUT(points, bulges, allowances, corners, drawn, items, tolerance) \
  recloth_cut_line(points, bulges, allowances, corners, drawn, items, tolerance, out, 32, &count, &error)
  CHECK(CUT(NULL, NULL, allowances, NULL, NULL, 4, 0.1) == RECLOTH_STATUS_NULL);
  CHECK(CUT(STRIP, NULL, NULL, NULL, NULL, 4, 0.1) == RECLOTH_STATUS_NULL);
  CHECK(strcmp(error.argument, "allowances") == 0);
  CHECK(CUT(STRIP, NULL, allowances, NULL, NULL, 1, 0.1) == RECLOTH_STATUS_COUNT);
  CHECK(CUT(STRIP, NULL, allowances, NULL, NULL, (size_t)-1, 0.1) == RECLOTH_STATUS_COUNT);
  CHECK(CUT(STRIP, NULL, allowances, choices, NULL, 4, 0.1) == RECLOTH_STATUS_CHOICE);
  CHECK(strcmp(error.argument, "corners") == 0 && error.value == 9 && error.at == 2);
  CHECK(CUT(STRIP, NULL, allowances, NULL, choices, 4, 0.1) == RECLOTH_STATUS_CHOICE);
  CHECK(recloth_error_text(&error, text, sizeof text) == RECLOTH_STATUS_OK);
  CHECK(strcmp(text, "drawn[2] = 9 is not one of the choices") == 0);
  CHECK(CUT(bow, NULL, allowances, NULL, NULL, 4, 0.1) == RECLOTH_STATUS_OUTLINE);
  CHECK(CUT(STRIP, NULL, allowances, NULL, NULL, 4, 0) == RECLOTH_STATUS_OUT_OF_RANGE);
  CHECK(strcmp(error.argument, "tolerance") == 0);
  CHECK(CUT(STRIP, NULL, allowances, NULL, NULL, 4, NAN) == RECLOTH_STATUS_NOT_FINITE);
  memcpy(points, STRIP, sizeof points);
  points[5] = NAN;
  CHECK(CUT(points, NULL, allowances, NULL, NULL, 4, 0.1) == RECLOTH_STATUS_NOT_FINITE);
  CHECK(recloth_error_text(&error, text, sizeof text) == RECLOTH_STATUS_OK);
  CHECK(strncmp(text, "point[", 6) == 0);
  allowances[2] = -1;
  CHECK(CUT(STRIP, NULL, allowances, NULL, NULL, 4, 0.1) == RECLOTH_STATUS_OUT_OF_RANGE);
  CHECK(strcmp(error.argument, "allowance") == 0 && error.at == 2);
  allowances[2] = 10;
  CHECK(recloth_cut_line(STRIP, NULL, allowances, NULL, NULL, 4, 0.1, NULL, 32, &count, &error) ==
        RECLOTH_STATUS_NULL);
  CHECK(recloth_cut_line(STRIP, NULL, allowances, NULL, NULL, 4, 0.1, out, 32, NULL, &error) ==
        RECLOTH_STATUS_NULL);
  CHECK(recloth_cut_line(STRIP, NULL, allowances, NULL, NULL, 4, 0.1, out, (size_t)-1, &count, &error) ==
        RECLOTH_STATUS_COUNT);
  CHECK(out[0] == -77 && count == 77);
}

/* The bottom of an undercut notch, 25 wide, more than twice any allowance, lies under those of its sides; the error
 * names the edge whose allowance is to be changed as it was given, either way round. */
static void a_lost_edge(void) {
  const double notch[] = {0, 0, 200, 0, 200, 100, 105, 100, 115, 70, 90, 70, 100, 100, 0, 100};
  const double allowances[] = {1, 1, 1, 10, 10, 10, 1, 1};
  double turned[16], turned_allowances[8];
  double out[200];
  size_t count, i;
  recloth_error_t error;
  CHECK(recloth_cut_line(notch, NULL, allowances, NULL, NULL, 8, 0.1, out, 100, &count, &error) ==
        RECLOTH_STATUS_NO_SOLUTION);
  CHECK(strcmp(error.argument, "allowance") == 0 && error.at == 3);
  CHECK(error.value == 10 && error.max < 10);
  for (i = 0; i < 8; i++) {
    turned[2 * i] = notch[2 * (7 - i)];
    turned[2 * i + 1] = notch[2 * (7 - i) + 1];
    /* From corner 7 - i to corner 6 - i. */
    turned_allowances[i] = allowances[(14 - i) % 8];
  }
  CHECK(recloth_cut_line(turned, NULL, turned_allowances, NULL, NULL, 8, 0.1, out, 100, &count, &error) ==
        RECLOTH_STATUS_NO_SOLUTION);
  CHECK(strcmp(error.argument, "allowance") == 0 && error.at == 3);
  CHECK(turned_allowances[error.at] == 10 && error.value == 10);
}

static char *file(const char *name) {
  FILE *stream = fopen(name, "rb");
  char *text;
  long size;
  if (!stream) return NULL;
  fseek(stream, 0, SEEK_END);
  size = ftell(stream);
  fseek(stream, 0, SEEK_SET);
  text = (char *)malloc((size_t)size + 1);
  if (text && fread(text, 1, (size_t)size, stream) == (size_t)size) {
    text[size] = 0;
  } else {
    free(text);
    text = NULL;
  }
  fclose(stream);
  return text;
}

static void plans(const char *folder) {
  char *brief = file("crates/recloth-plan/src/example.toml");
  char *json = NULL, *again = NULL, *message = NULL;
  char name[1024];
  recloth_error_t error;
  CHECK(brief != NULL);
  if (!brief) return;
  CHECK(recloth_plan(brief, "shirt.toml", NULL, &json, &message, &error) == RECLOTH_STATUS_OK);
  CHECK(message == NULL && json != NULL && json[0] == '{');
  CHECK(strstr(json, "\"title\": \"A pinafore from a shirt\"") != NULL);
  CHECK(recloth_plan(brief, "shirt.toml", folder, NULL, NULL, NULL) == RECLOTH_STATUS_OK);
  snprintf(name, sizeof name, "%s/plan.json", folder);
  again = file(name);
  CHECK(again != NULL && strcmp(again, json) == 0);
  free(again);
  snprintf(name, sizeof name, "%s/worksheet.html", folder);
  again = file(name);
  CHECK(again != NULL && strstr(again, "pinafore bib") != NULL);
  /* A file is no folder. */
  CHECK(recloth_plan(brief, "shirt.toml", name, NULL, &message, &error) == RECLOTH_STATUS_INVALID);
  CHECK(strcmp(error.argument, "folder") == 0 && message && strstr(message, "worksheet.html"));
  recloth_text_free(message);
  recloth_text_free(json);
  free(again);
  free(brief);
}

static void bad_briefs(void) {
  const char *brief = "title = \"Coat\"\nprnt_in = \"centimetres\"\n";
  char *json = NULL, *message = NULL;
  char text[160];
  recloth_error_t error;
  CHECK(recloth_plan(brief, "coat.toml", NULL, &json, &message, &error) == RECLOTH_STATUS_INVALID);
  CHECK(json == NULL && message && strncmp(message, "coat.toml:2: ", 13) == 0);
  CHECK(message && strstr(message, "\"print_in\""));
  CHECK(strcmp(error.argument, "brief") == 0 && error.value == 2);
  CHECK(recloth_error_text(&error, text, sizeof text) == RECLOTH_STATUS_OK);
  CHECK(strcmp(text, "brief: the text or data handed over is not valid") == 0);
  recloth_text_free(message);
  message = NULL;
  CHECK(recloth_plan(brief, "coat.toml", NULL, NULL, NULL, NULL) == RECLOTH_STATUS_INVALID);
  CHECK(recloth_plan(NULL, "coat.toml", NULL, &json, &message, &error) == RECLOTH_STATUS_NULL);
  CHECK(json == NULL && message && strstr(message, "brief"));
  recloth_text_free(message);
  CHECK(recloth_plan(brief, NULL, NULL, &json, NULL, &error) == RECLOTH_STATUS_NULL);
  CHECK(strcmp(error.argument, "name") == 0);
  CHECK(recloth_plan("\xff\xfe", "coat.toml", NULL, &json, NULL, &error) == RECLOTH_STATUS_NOT_UTF8);
  CHECK(recloth_plan("", "coat.toml", NULL, &json, &message, &error) == RECLOTH_STATUS_INVALID);
  CHECK(json == NULL && message != NULL);
  recloth_text_free(message);
  recloth_text_free(NULL);
}

int main(int argc, char **argv) {
  if (argc != 2) {
    printf("shapes FOLDER: an empty folder to write a plan into\n");
    return 2;
  }
  strips();
  arcs();
  wrong_pieces();
  a_lost_edge();
  plans(argv[1]);
  bad_briefs();
  printf("%d passed, %d failed\n", passed, failed);
  return failed > 0 || passed == 0;
}
