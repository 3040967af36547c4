/* Lays as a C program sees them: JSON in and out, a search told of and stopped. Figures are worked by hand beside each
 * check; measures are invented. Run under valgrind, it leaves nothing unfreed. */

#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "check.h"
#include "recloth.h"

#define OK(call) CHECK((call) == RECLOTH_STATUS_OK)
#define FAILS(call, kind, name) CHECK((call) == RECLOTH_STATUS_##kind && strcmp(error.argument, name) == 0)

/* A rectangle as JSON. */
#define RECTANGLE(w, h) \
  "[{\"x\": 0, \"y\": 0}, {\"x\": " #w ", \"y\": 0}, {\"x\": " #w ", \"y\": " #h "}, {\"x\": 0, \"y\": " #h "}]"
#define POCKETS "\"parts\": [{\"name\": \"pocket\", \"outline\": " RECTANGLE(150, 180) ", \"as_drawn\": 2}]"
#define BACK "\"panels\": [{\"name\": \"back\", \"outline\": " RECTANGLE(310, 200) "}]"

/* The number that stands behind a key. */
static double number(const char *json, const char *key) {
  const char *at = json == NULL ? NULL : strstr(json, key);
  return at == NULL ? NAN : strtod(at + strlen(key), NULL);
}

static void drop(char **text) {
  recloth_text_free(*text);
  *text = NULL;
}

static int stop(double done, double best, void *user) {
  CHECK(done >= 0 && done <= 1 && (isnan(best) || best <= 1) && user == NULL);
  return 1;
}

static void fits(void) {
  recloth_error_t error;
  char *out = NULL, *message = NULL, *wrong = NULL;
  size_t count = 77;

  /* Two of 150 beside each other with 2 between: 302 of 310. */
  OK(recloth_fit("{" POCKETS ", " BACK ", \"options\": {\"spacing\": 2}}", NULL, NULL, &out, &message, &error));
  CHECK(out != NULL && message == NULL && strstr(out, "\"together\":\"fit\"") != NULL);
  CHECK(number(out, "\"spacing\":") == 2);
  OK(recloth_check_lay(out, &count, &wrong, &message, &error));
  CHECK(count == 0 && wrong != NULL && strcmp(wrong, "[]") == 0);
  drop(&out);
  drop(&wrong);
  /* Stopped at once, it says what is known then. */
  OK(recloth_fit("{" POCKETS ", " BACK "}", stop, NULL, &out, NULL, NULL));
  OK(recloth_check_lay(out, &count, NULL, NULL, NULL));
  CHECK(count == 0);
  drop(&out);
  /* With 11 between they would need 311: proved. */
  OK(recloth_fit("{" POCKETS ", " BACK ", \"options\": {\"spacing\": 11, \"budget\": 2000000}}", NULL, NULL, &out, NULL, NULL));
  CHECK(strstr(out, "\"together\":{\"cannot\":") != NULL && strstr(out, "\"count\":1") != NULL);
  drop(&out);
  /* 190 long, where there are 180. */
  OK(recloth_fit("{\"parts\": [{\"name\": \"band\", \"outline\": " RECTANGLE(50, 190) "}], "
                 "\"panels\": [{\"name\": \"cuff\", \"outline\": " RECTANGLE(100, 180) "}]}", NULL, NULL, &out, NULL, NULL));
  CHECK(strstr(out, "\"cannot\"") != NULL && number(out, "\"needed\":") == 190 && number(out, "\"there\":") == 180);
  drop(&out);

  FAILS(recloth_fit("{" POCKETS ", " BACK ", \"options\": {\"spacing\": -1}}", NULL, NULL, &out, &message, &error), OUT_OF_RANGE, "spacing");
  CHECK(out == NULL && error.value == -1 && message != NULL && strstr(message, "options: spacing") != NULL);
  drop(&message);
  FAILS(recloth_fit("{\"parts\": [{\"name\": \"bow\", \"outline\": [{\"x\": 0, \"y\": 0}]}], \"panels\": []}", NULL, NULL, &out, &message, &error),
        COUNT, "outline");
  CHECK(message != NULL && strstr(message, "part \"bow\"") != NULL);
  drop(&message);
  FAILS(recloth_fit("{" POCKETS ",\n \"panel\": []}", NULL, NULL, &out, &message, &error), INVALID, "json");
  CHECK(error.value == 2 && message != NULL && strstr(message, "panel") != NULL);
  drop(&message);
  FAILS(recloth_fit("{" POCKETS "}", NULL, NULL, &out, NULL, &error), INVALID, "json");
  FAILS(recloth_fit(NULL, NULL, NULL, &out, NULL, &error), NULL, "json");
  FAILS(recloth_fit("\xff", NULL, NULL, &out, NULL, &error), NOT_UTF8, "json");
  FAILS(recloth_fit("{" POCKETS ", " BACK "}", NULL, NULL, NULL, NULL, &error), NULL, "out");
  CHECK(out == NULL);
}

/* What a caller's own data may be. */
struct told {
  int calls, stop_after;
  double done, best;
};

static int progress(double done, double best, void *user) {
  struct told *told = (struct told *)user;
  CHECK(done >= told->done && done <= 1 && (isnan(best) || isnan(told->best) || best <= told->best));
  told->done = done;
  told->best = best;
  told->calls++;
  return told->stop_after > 0 && told->calls >= told->stop_after;
}

#define GORES "\"parts\": [{\"name\": \"gore\", \"outline\": [{\"x\": 0, \"y\": 0}, {\"x\": 420, \"y\": 0}, " \
  "{\"x\": 300, \"y\": 800}, {\"x\": 120, \"y\": 800}], \"as_drawn\": 6, \"mirrored\": 2}]"

static void strips(void) {
  recloth_error_t error;
  struct told told = {0, 0, 0, NAN};
  char *out = NULL, *again = NULL, *message = NULL;
  size_t count = 77;

  /* Two side by side on 310 of width: as long as one. */
  OK(recloth_strip("{" POCKETS ", \"strip\": {\"width\": 310}}", NULL, NULL, &out, NULL, NULL));
  CHECK(fabs(number(out, "\"length\":") - 180) < 1e-6);
  OK(recloth_check_lay(out, &count, NULL, NULL, NULL));
  CHECK(count == 0);
  drop(&out);

  OK(recloth_strip("{" GORES ", \"strip\": {\"width\": 1400}, \"options\": {\"budget\": 3000000}}", progress, &told, &out, &message, &error));
  CHECK(told.calls > 2 && message == NULL);
  /* Eight gores of (420 + 180) / 2 * 800 are 1.92 m2, on 1.4 m at least 1371 mm. */
  CHECK(number(out, "\"length\":") > 1371 && number(out, "\"length\":") < 2100);
  OK(recloth_strip("{" GORES ", \"strip\": {\"width\": 1400}, \"options\": {\"budget\": 3000000, \"threads\": 1}}", NULL, NULL, &again, NULL, NULL));
  CHECK(strcmp(out, again) == 0);
  drop(&out);
  drop(&again);
  /* A search without end but for the word of its caller. */
  told.calls = 0;
  told.stop_after = 40;
  told.done = 0;
  told.best = NAN;
  OK(recloth_strip("{" GORES ", \"strip\": {\"width\": 1400}, \"options\": {\"budget\": 10000000000000}}", progress, &told, &out, NULL, NULL));
  CHECK(told.calls == 40);
  OK(recloth_check_lay(out, &count, NULL, NULL, NULL));
  CHECK(count == 0);
  drop(&out);

  FAILS(recloth_strip("{" GORES ", \"strip\": {\"width\": 300}}", NULL, NULL, &out, &message, &error), NO_SOLUTION, "width");
  CHECK(out == NULL && fabs(error.min - 420) < 1e-3 && message != NULL && strstr(message, "gore") != NULL);
  drop(&message);
  FAILS(recloth_strip("{" GORES ", \"strip\": {\"width\": 1400}}", NULL, NULL, NULL, NULL, &error), NULL, "out");
  FAILS(recloth_strip("{}", NULL, NULL, &out, &message, &error), INVALID, "json");
  drop(&message);
}

/* Half of it lies on either side of x = 150. */
#define FRONT "{\"name\": \"front\", \"outline\": " RECTANGLE(300, 400) ", \"fold\": [{\"x\": 150, \"y\": 0}, {\"x\": 150, \"y\": 1}]}"
#define BACKS "{\"name\": \"back\", \"outline\": " RECTANGLE(140, 400) ", \"mirrored\": 1}"

static void folded(void) {
  recloth_error_t error;
  char *out = NULL, *wrong = NULL, *message = NULL, *fold = NULL;
  size_t count = 77;

  /* On layers of 295 half of the front, 150, lies beside a back of 140: as long as they are. */
  OK(recloth_strip("{\"parts\": [" FRONT ", " BACKS "], \"strip\": {\"width\": 590, \"folded\": true}}", NULL, NULL, &out, NULL, NULL));
  CHECK(fabs(number(out, "\"length\":") - 400) < 1e-6);
  fold = out == NULL ? NULL : strstr(out, "\"folds\":[{\"panel\":0,\"from\":{\"x\":0.0,\"y\":295.0}");
  CHECK(fold != NULL);
  OK(recloth_check_lay(out, &count, &wrong, NULL, NULL));
  CHECK(count == 0);
  drop(&wrong);
  /* Folded ten millimetres further on, the front does not lie on the fold, and the backs lie over each other's images. */
  if (fold != NULL) memcpy(strstr(fold, "295.0"), "305.0", 5);
  if (fold != NULL) memcpy(strstr(fold, "295.0"), "305.0", 5);
  OK(recloth_check_lay(out, &count, &wrong, NULL, NULL));
  CHECK(count > 0 && strstr(wrong, "cut through both layers") != NULL);
  drop(&wrong);
  drop(&out);
  /* 300 goes onto 590 opened, not onto a layer of 295. */
  FAILS(recloth_strip("{\"parts\": [{\"name\": \"yoke\", \"outline\": " RECTANGLE(300, 90) "}], \"strip\": {\"width\": 590, \"folded\": true}}",
                      NULL, NULL, &out, &message, &error),
        NO_SOLUTION, "width");
  CHECK(fabs(error.min - 600) < 1e-6 && message != NULL && strstr(message, "fits opened") != NULL);
  drop(&message);
  /* A fold that the outline is not its own mirror image in. */
  FAILS(recloth_strip("{\"parts\": [{\"name\": \"front\", \"outline\": " RECTANGLE(300, 400) ", \"fold\": [{\"x\": 149, \"y\": 0}, {\"x\": 149, \"y\": 1}]}], \"strip\": {\"width\": 590}}",
                      NULL, NULL, &out, &message, &error),
        NO_SOLUTION, "fold");
  CHECK(out == NULL && fabs(error.value - 2) < 1e-6);
  drop(&message);
}

#define AT(x) "{\"part\": 0, \"hand\": \"as_drawn\", \"panel\": 0, \"mirrored\": false, \"turn_deg\": 0, \"shift\": {\"x\": " #x ", \"y\": 10}}"
#define LAY(x) "{" POCKETS ", " BACK ", \"lay\": {\"placements\": [" AT(0) ", " AT(x) "], \"unplaced\": [], \"spacing\": 0}}"

static void checks(void) {
  recloth_error_t error;
  char *wrong = NULL, *message = NULL;
  size_t count = 77;

  OK(recloth_check_lay(LAY(150), &count, &wrong, &message, &error));
  CHECK(count == 0 && strcmp(wrong, "[]") == 0);
  drop(&wrong);
  /* One hundredth of a millimetre over the other, one over the edge. */
  OK(recloth_check_lay(LAY(149.99), &count, &wrong, NULL, NULL));
  CHECK(count == 1 && strstr(wrong, "overlap") != NULL);
  drop(&wrong);
  OK(recloth_check_lay(LAY(160.01), &count, &wrong, NULL, NULL));
  CHECK(count == 1 && strstr(wrong, "leaves") != NULL);
  drop(&wrong);
  OK(recloth_check_lay("{" POCKETS ", " BACK ", \"lay\": {\"placements\": [], \"unplaced\": [], \"spacing\": 0}}", &count, NULL, NULL, NULL));
  CHECK(count == 1);

  FAILS(recloth_check_lay("{" POCKETS ", " BACK "}", &count, &wrong, &message, &error), INVALID, "json");
  CHECK(count == 1 && wrong == NULL && message != NULL && strstr(message, "a lay is wanted") != NULL);
  drop(&message);
  FAILS(recloth_check_lay("{\"parts\": [{\"name\": \"bow\", \"outline\": []}], \"panels\": [], \"lay\": "
                          "{\"placements\": [], \"unplaced\": [], \"spacing\": 0}}", &count, &wrong, &message, &error),
        COUNT, "outline");
  CHECK(message != NULL && strstr(message, "part \"bow\"") != NULL);
  drop(&message);
  FAILS(recloth_check_lay(LAY(150), NULL, &wrong, NULL, &error), NULL, "count");
  CHECK(wrong == NULL);
}

static void parts(void) {
  static const double corners[] = {0, 0, 130, 0, 130, 160, 0, 160}, allowances[] = {10, 10, 10, 10};
  recloth_error_t error;
  recloth_piece *piece = NULL;
  char *part = NULL, *out = NULL, job[4096];
  size_t count = 77;

  OK(recloth_piece_from_edges("pocket", corners, NULL, allowances, NULL, NULL, NULL, 4, &piece, NULL));
  OK(recloth_piece_part(piece, 0.05, &part, &error));
  CHECK(part != NULL && strstr(part, "\"name\":\"pocket\"") != NULL && number(part, "\"as_drawn\":") == 1);
  /* Its cut line is 150 by 180. */
  sprintf(job, "{\"parts\": [%s, %s], \"strip\": {\"width\": 300}}", part, part);
  OK(recloth_strip(job, NULL, NULL, &out, NULL, NULL));
  CHECK(fabs(number(out, "\"length\":") - 180) < 1e-6);
  OK(recloth_check_lay(out, &count, NULL, NULL, NULL));
  CHECK(count == 0);
  drop(&part);
  drop(&out);
  FAILS(recloth_piece_part(piece, 0, &part, &error), OUT_OF_RANGE, "tolerance");
  FAILS(recloth_piece_part(NULL, 0.05, &part, &error), NULL, "piece");
  FAILS(recloth_piece_part(piece, 0.05, NULL, &error), NULL, "out");
  CHECK(part == NULL);
  recloth_piece_free(piece);
}

/* 640 of band, of 420 and 260 with 10 of allowance each: half 1 is 410 or 250 long at most, so the seam lies at 230 to 250
 * (or at 390 to 410). */
#define BAND "\"parts\": [{\"name\": \"band\", \"outline\": " RECTANGLE(60, 640) "}]"
#define SCRAPS "\"panels\": [{\"name\": \"left\", \"outline\": " RECTANGLE(60, 420) "}, {\"name\": \"right\", \"outline\": " RECTANGLE(60, 260) "}]"
#define JOIN "{\"part\": 0, \"kind\": {\"join\": {\"across_deg\": 90, \"from\": 100, \"to\": 540, \"allowance\": 10}}}"

static void least_changes(void) {
  recloth_error_t error;
  char *out = NULL, *message = NULL;
  size_t count = 77;
  struct told told = {0, 0, 0, NAN};

  OK(recloth_least_change("{" BAND ", " SCRAPS ", \"changes\": [" JOIN "]}", progress, &told, &out, &message, &error));
  CHECK(out != NULL && message == NULL && told.calls > 0 && isnan(told.best));
  CHECK(strstr(out, "\"answer\":\"changed\"") != NULL && strstr(out, "\"words\":\"band: joined, 240 mm from its end\"") != NULL);
  CHECK(number(out, "\"at\":") == 240 && strstr(out, "\"out_of_time\":false") != NULL);
  OK(recloth_check_lay(out, &count, NULL, NULL, NULL));
  CHECK(count == 0);
  drop(&out);
  /* Two of 150 on 310: nothing need give. */
  OK(recloth_least_change("{" POCKETS ", " BACK ", \"changes\": []}", NULL, NULL, &out, NULL, NULL));
  CHECK(strstr(out, "\"answer\":\"nothing\"") != NULL);
  drop(&out);
  /* Shorter by 10 it is still 630, on 420 at most. */
  OK(recloth_least_change("{" BAND ", " SCRAPS ", \"changes\": [{\"part\": 0, \"kind\": {\"shorter\": "
                          "{\"toward_deg\": 90, \"beyond\": 500, \"most\": 10}}}]}", NULL, NULL, &out, NULL, NULL));
  CHECK(strstr(out, "\"answer\":\"never\"") != NULL && strstr(out, "\"no_panel\"") != NULL && strstr(out, "\"fit\":null") != NULL);
  FAILS(recloth_check_lay(out, &count, NULL, NULL, &error), INVALID, "json");
  drop(&out);
  /* Stopped at once, or out of time. */
  OK(recloth_least_change("{" BAND ", " SCRAPS ", \"changes\": [" JOIN "]}", stop, NULL, &out, NULL, NULL));
  CHECK(strstr(out, "\"answer\":\"undecided\"") != NULL && strstr(out, "\"out_of_time\":false") != NULL);
  drop(&out);
  OK(recloth_least_change("{" BAND ", " SCRAPS ", \"changes\": [" JOIN "], \"options\": {\"seconds\": 0}}", NULL, NULL, &out, NULL, NULL));
  CHECK(strstr(out, "\"out_of_time\":true") != NULL);
  drop(&out);

  FAILS(recloth_least_change("{" BAND ", " SCRAPS ", \"changes\": [{\"part\": 0, \"kind\": {\"tilt\": {\"to_deg\": 200}}}]}", NULL, NULL, &out, &message, &error), OUT_OF_RANGE, "to_deg");
  CHECK(out == NULL && message != NULL && strstr(message, "change 0") != NULL);
  drop(&message);
  FAILS(recloth_least_change("{" BAND ", " SCRAPS "}", NULL, NULL, &out, &message, &error), INVALID, "json");
  CHECK(message != NULL && strstr(message, "changes") != NULL);
  drop(&message);
  FAILS(recloth_least_change("{" BAND ", " SCRAPS ", \"changes\": []}", NULL, NULL, NULL, NULL, &error), NULL, "out");
}

/* A skirt 380 wide below and 220 above, 650 long, on 400 x 700: 50 longer, 20 wider. */
#define SKIRT "\"parts\": [{\"name\": \"skirt\", \"outline\": [{\"x\": 0, \"y\": 0}, {\"x\": 380, \"y\": 0}, " \
  "{\"x\": 300, \"y\": 650}, {\"x\": 80, \"y\": 650}]}]"
#define CLOTH "\"panels\": [{\"name\": \"back\", \"outline\": " RECTANGLE(400, 700) "}]"

/* A caller that makes four pockets of 150 x depth, and counts. */
struct maker {
  char parts[400];
  int calls, stop;
  const char *instead;
};

static int pockets(double depth, const char **parts, void *user) {
  struct maker *maker = (struct maker *)user;
  maker->calls++;
  sprintf(maker->parts, "[{\"name\": \"pocket\", \"as_drawn\": 4, \"outline\": [{\"x\": 0, \"y\": 0}, {\"x\": 150, \"y\": 0}, "
          "{\"x\": 150, \"y\": %.3f}, {\"x\": 0, \"y\": %.3f}]}]", depth, depth);
  *parts = maker->instead != NULL ? maker->instead : maker->parts;
  return maker->stop;
}

static int none(double value, const char **parts, void *user) {
  return value < 0 && parts == NULL && user == NULL;
}

static void larger(void) {
  recloth_error_t error;
  struct maker maker = {"", 0, 0, NULL};
  char *out = NULL, *message = NULL;
  size_t count = 77;

  OK(recloth_longest("{" SKIRT ", " CLOTH ", \"outward\": {\"part\": 0, \"beyond\": -100, \"most\": 200, \"opposite\": true}}",
                     NULL, NULL, &out, &message, &error));
  CHECK(number(out, "\"value\":") == 50 && fabs(number(out, "\"refused\":") - 50.1) < 1e-9);
  OK(recloth_check_lay(out, &count, NULL, NULL, NULL));
  CHECK(count == 0);
  drop(&out);
  OK(recloth_fullest("{" SKIRT ", " CLOTH ", \"outward\": {\"part\": 0, \"beyond\": 190, \"most\": 100}}", NULL, NULL, &out, NULL, NULL));
  CHECK(number(out, "\"value\":") == 20);
  drop(&out);
  OK(recloth_fullest("{" SKIRT ", " CLOTH ", \"outward\": {\"part\": 0, \"beyond\": 190, \"most\": 100}}", stop, NULL, &out, NULL, NULL));
  CHECK(strstr(out, "\"out_of_time\":false") != NULL);
  drop(&out);
  FAILS(recloth_longest("{" SKIRT ", " CLOTH ", \"outward\": {\"part\": 0, \"beyond\": 900, \"most\": 10}}", NULL, NULL, &out, &message, &error),
        NO_SOLUTION, "beyond");
  CHECK(out == NULL && message != NULL && strstr(message, "skirt") != NULL);
  drop(&message);
  FAILS(recloth_fullest("{" SKIRT ", " CLOTH "}", NULL, NULL, &out, NULL, &error), INVALID, "json");

  /* Two beside each other: twice the depth is 700. */
#define VALUES "{\"values\": {\"low\": 100, \"high\": 400, \"step\": 5}, " CLOTH "}"
  OK(recloth_largest(VALUES, pockets, NULL, &maker, &out, &message, &error));
  CHECK(number(out, "\"value\":") == 350 && maker.calls > 3);
  OK(recloth_check_lay(out, &count, NULL, NULL, NULL));
  CHECK(count == 0);
  drop(&out);
  maker.stop = 7;
  FAILS(recloth_largest(VALUES, pockets, NULL, &maker, &out, &message, &error), INVALID, "parts_at");
  CHECK(error.value == 7 && message == NULL);
  maker.stop = 0;
  maker.instead = "[\n{\"nam\": 5}]";
  FAILS(recloth_largest(VALUES, pockets, NULL, &maker, &out, &message, &error), INVALID, "parts");
  CHECK(error.value == 2 && message != NULL && strstr(message, "parts of 400: unknown field `nam`") != NULL);
  drop(&message);
  FAILS(recloth_largest(VALUES, none, NULL, NULL, &out, &message, &error), NULL, "parts");
  FAILS(recloth_largest(VALUES, NULL, NULL, NULL, &out, &message, &error), NULL, "parts_at");
  FAILS(recloth_largest("{\"values\": {\"low\": 1, \"high\": 2, \"step\": 0}, " CLOTH "}", pockets, NULL, &maker, &out, &message, &error),
        OUT_OF_RANGE, "step");
  CHECK(out == NULL && message != NULL && strstr(message, "values: step") != NULL);
  drop(&message);
}

/* 310 x 200 less two of 150 x 180 side by side at the left below, from y = 10. */
static void left_over(void) {
  recloth_error_t error;
  char *out = NULL, *message = NULL;

  OK(recloth_leftovers(LAY(150), 1, 5, &out, &message, &error));
  /* 62 000 - 54 000 = 8000; the largest rectangle is 310 x 10 or 10 x 200: 3100. */
  CHECK(message == NULL && fabs(number(out, "\"area_mm2\":") - 8000) < 1);
  CHECK(strstr(out, "\"rectangles\":[{") != NULL);
  drop(&out);
  OK(recloth_leftovers(LAY(150), 0, 5, &out, NULL, NULL));
  CHECK(strstr(out, "\"rectangles\":[]") != NULL);
  drop(&out);
  FAILS(recloth_leftovers(LAY(150), 101, 5, &out, &message, &error), OUT_OF_RANGE, "rectangles");
  drop(&message);
  FAILS(recloth_leftovers("{" POCKETS ", " BACK "}", 1, 5, &out, &message, &error), INVALID, "json");
  CHECK(message != NULL && strstr(message, "a lay is wanted") != NULL);
  drop(&message);
  FAILS(recloth_leftovers(LAY(150), 1, 5, NULL, NULL, &error), NULL, "out");
  CHECK(out == NULL);
}

int main(void) {
  setvbuf(stdout, NULL, _IONBF, 0);
  fits();
  strips();
  folded();
  checks();
  parts();
  least_changes();
  larger();
  left_over();
  printf("%d passed, %d failed\n", passed, failed);
  return failed > 0 || passed == 0;
}
