/* Pieces, panels and drafts behind handles, as a C program sees them. Figures are worked by hand beside each check;
 * measures are invented. Run under valgrind, it leaves nothing unfreed. */

#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "check.h"
#include "recloth.h"

#define OK(call) CHECK((call) == RECLOTH_STATUS_OK)
/* The call fails so, naming this argument, which recloth_error_text() knows. */
#define FAILS(call, kind, name) CHECK((call) == RECLOTH_STATUS_##kind && named(&error, name))

static int named(const recloth_error_t *error, const char *argument) {
  char text[160];
  recloth_error_text(error, text, sizeof text);
  if (strcmp(error->argument, argument) == 0 && strncmp(text, "an argument", 11) != 0) return 1;
  printf("%s: %s\n", error->argument, text);
  return 0;
}

/* A call that fails hands nothing out, so what was freed must not stay. */
#define DROP(piece) (recloth_piece_free(piece), (piece) = NULL)

static int near(double a, double b) { return fabs(a - b) < 1e-6; }

static double area(const double *points, size_t count) {
  double sum = 0;
  size_t i;
  for (i = 0; i < count; i++) {
    const double *a = points + 2 * i, *b = points + 2 * ((i + 1) % count);
    sum += a[0] * b[1] - b[0] * a[1];
  }
  return sum / 2;
}

static const double RECTANGLE[] = {0, 0, 300, 0, 300, 400, 0, 400};

static recloth_piece *rectangle(const char *name) {
  const double allowances[] = {10, 10, 10, 10};
  recloth_piece *piece = NULL;
  OK(recloth_piece_from_edges(name, RECTANGLE, NULL, allowances, NULL, NULL, NULL, 4, &piece, NULL));
  return piece;
}

static recloth_piece_facts_t facts(const recloth_piece *piece) {
  recloth_piece_facts_t out;
  memset(&out, 0, sizeof out);
  OK(recloth_piece_facts(piece, &out, NULL));
  return out;
}

static void pieces(void) {
  recloth_piece *piece = rectangle("pocket"), *back = NULL, *rounded = NULL;
  const double allowances[] = {10, 10, 10, 10};
  double sizes[] = {10, 5, 0, 0};
  const int32_t corners[] = {RECLOTH_CORNER_ROUNDED, RECLOTH_CORNER_TRIMMED, RECLOTH_CORNER_POINTED,
                             RECLOTH_CORNER_POINTED};
  recloth_error_t error, unmade[4];
  recloth_segment_t segments[64];
  recloth_place_t place;
  double points[256], off, at[4], length;
  char name[16], text[200], *json = NULL, *message = NULL;
  size_t count = 77, edge = 77;
  uint32_t handed = 7;

  CHECK(facts(piece).edges == 4 && facts(piece).area_mm2 == 120000 && facts(piece).fold == -1);
  CHECK(facts(piece).right == 300 && facts(piece).top == 400 && facts(piece).grain_deg == 90);
  OK(recloth_piece_name(piece, name, sizeof name, NULL));
  CHECK(strcmp(name, "pocket") == 0);
  FAILS(recloth_piece_name(piece, name, 6, &error), ROOM, "out");
  CHECK(error.min == 7);
  OK(recloth_piece_edge(piece, "2", &edge, NULL));
  OK(recloth_piece_edge_name(piece, edge, name, sizeof name, NULL));
  CHECK(edge == 2 && strcmp(name, "2") == 0);
  FAILS(recloth_piece_edge(piece, "hem", &edge, &error), NO_SOLUTION, "name");
  FAILS(recloth_piece_edge_name(piece, 4, name, sizeof name, &error), NO_SOLUTION, "edge");
  OK(recloth_piece_edge_length(piece, 1, &length, NULL));
  CHECK(length == 400);
  OK(recloth_piece_at(piece, 1, 100, at, NULL));
  CHECK(at[0] == 300 && at[1] == 100 && at[2] == 1 && at[3] == 0);
  FAILS(recloth_piece_at(piece, 1, NAN, at, &error), NOT_FINITE, "distance");
  OK(recloth_piece_place(piece, 150, -7, &place, &off, NULL));
  CHECK(place.edge == 0 && near(place.distance, 150) && near(off, 7));
  OK(recloth_piece_handed(piece, 0.01, &handed, NULL));
  CHECK(handed == 0);

  FAILS(recloth_piece_cut_line(piece, 0.1, NULL, 0, &count, &error), ROOM, "out");
  CHECK(error.min >= 4 && error.min <= 128 && count == 77);
  OK(recloth_piece_cut_line(piece, 0.1, points, 128, &count, NULL));
  CHECK(count == (size_t)error.min && near(area(points, count), 320 * 420));
  OK(recloth_piece_seam_line(piece, 0.1, points, 128, &count, NULL));
  CHECK(count == 4 && near(area(points, count), 120000));
  OK(recloth_piece_cut_segments(piece, 0.1, segments, 64, &count, NULL));
  CHECK(count >= 4 && segments[0].bulge == 0 && segments[0].end_x == segments[1].start_x);
  FAILS(recloth_piece_cut_line(piece, 0, points, 128, &count, &error), OUT_OF_RANGE, "tolerance");
  /* A rounded corner of 10 takes (1 - pi / 4) of its square; one trimmed at 5 a triangle 10 sqrt 2 - 5 high. */
  OK(recloth_piece_from_edges("p", RECTANGLE, NULL, allowances, corners, sizes, NULL, 4, &rounded, &error));
  OK(recloth_piece_cut_line(rounded, 0.001, points, 128, &count, NULL));
  {
    double corner = 10 * sqrt(2) - 5, want = 320 * 420 - 100 * (1 - acos(-1) / 4) - corner * corner;
    CHECK(fabs(area(points, count) - want) < 0.1);
    if (fabs(area(points, count) - want) >= 0.1) printf("%f, not %f\n", area(points, count), want);
  }
  FAILS(recloth_piece_from_edges("p", RECTANGLE, NULL, allowances, corners, NULL, NULL, 4, &rounded, &error), CHOICE,
        "corners");

  /* The second corner is 10 sqrt 2 deep, so it cannot be trimmed at 20; the first is rounded as asked. */
  DROP(rounded);
  sizes[1] = 20;
  OK(recloth_piece_from_edges("p", RECTANGLE, NULL, allowances, corners, sizes, NULL, 4, &rounded, &error));
  FAILS(recloth_piece_cut_unmade(rounded, 0.1, NULL, 0, &count, &error), ROOM, "out");
  CHECK(error.min == 1);
  OK(recloth_piece_cut_unmade(rounded, 0.1, unmade, 4, &count, NULL));
  CHECK(count == 1 && unmade[0].at == 1 && near(unmade[0].max, 10 * sqrt(2)) && unmade[0].value == 20);
  OK(recloth_error_text(&unmade[0], text, sizeof text));
  CHECK(strstr(text, "[1] = 20") != NULL);
  OK(recloth_piece_cut_unmade(piece, 0.1, NULL, 0, &count, NULL));
  CHECK(count == 0);

  OK(recloth_piece_to_json(piece, &json, NULL));
  OK(recloth_piece_from_json(json, &back, &message, &error));
  CHECK(facts(back).area_mm2 == 120000 && message == NULL);
  recloth_text_free(json);
  DROP(back);
  FAILS(recloth_piece_from_json("{\n\"nam\": 1}", &back, &message, &error), INVALID, "json");
  CHECK(back == NULL && message != NULL && strstr(message, "nam") != NULL && error.value == 2);
  recloth_text_free(message);
  FAILS(recloth_piece_from_json("\xff", &back, NULL, &error), NOT_UTF8, "json");

  DROP(rounded);
  DROP(piece);
  recloth_piece_free(NULL);
}

static void operations(void) {
  recloth_piece *piece = rectangle("panel"), *one = NULL, *two = NULL, *three = NULL;
  const recloth_curve_t across = {-10, 150, 310, 150, 0, 0, 0, 0, 0, 0};
  const recloth_curve_t beside = {-10, 950, 310, 950, 0, 0, 0, 0, 0, 0};
  const recloth_place_t top = {2, 150}, side = {1, 200};
  const recloth_slash_t slash = {{0, 150}, {2, 150}, 40, 0}, wide = {{0, 150}, {2, 150}, 40, 40};
  const double notch[] = {100};
  const size_t edges[] = {0}, others[] = {2}, bad[] = {9};
  recloth_opening_t opening;
  recloth_cut_notch_t notches[8];
  recloth_error_t error;
  recloth_walk_t walk;
  double gap = -1, largest = -1;
  char *details = NULL;
  size_t count = 0, edge = 77;

  OK(recloth_piece_mirror(piece, &one, NULL));
  CHECK(facts(one).left == -300 && facts(one).area_mm2 == 120000);
  DROP(one);
  OK(recloth_piece_shifted(piece, 5, -5, &one, NULL));
  CHECK(facts(one).left == 5 && facts(one).bottom == -5);
  DROP(one);
  FAILS(recloth_piece_shifted(piece, INFINITY, 0, &one, &error), NOT_FINITE, "x");
  OK(recloth_piece_turned(piece, 90, &one, NULL));
  CHECK(near(facts(one).left, -400) && near(facts(one).top, 300));
  DROP(one);
  OK(recloth_piece_unfold(piece, &one, NULL));
  CHECK(facts(one).area_mm2 == 120000);
  DROP(one);
  OK(recloth_piece_scale_for_change(piece, -20, 0, &one, NULL));
  /* 400 mm that lose a fifth must be 500. */
  CHECK(near(facts(one).top - facts(one).bottom, 500));
  DROP(one);
  OK(recloth_piece_shift_edges(piece, edges, 1, 25, &one, NULL));
  CHECK(near(facts(one).area_mm2, 300 * 425));
  DROP(one);
  FAILS(recloth_piece_shift_edges(piece, bad, 1, 25, &one, &error), OUT_OF_RANGE, "edge");
  OK(recloth_piece_facing(piece, edges, 1, "facing", 50, 0, 0, &one, NULL));
  CHECK(near(facts(one).area_mm2, 300 * 50));
  DROP(one);
  FAILS(recloth_piece_facing(piece, edges, 1, "facing", 0, 0, 0, &one, &error), OUT_OF_RANGE, "depth");

  OK(recloth_piece_split(piece, &across, "yoke seam", 15, notch, 1, &one, &two, NULL));
  CHECK(near(facts(one).area_mm2 + facts(two).area_mm2, 120000) && near(facts(one).area_mm2, 300 * 250));
  OK(recloth_piece_cut_notches(one, 0.1, notches, 8, &count, NULL));
  CHECK(count == 1 && near(notches[0].seam_y, 150) && notches[0].marks == 1 && notches[0].depth > 0);
  OK(recloth_piece_edge(one, "yoke seam", &count, NULL));
  OK(recloth_piece_edge(two, "yoke seam", &edge, NULL));
  OK(recloth_piece_join(one, count, two, edge, 0.1, &three, &gap, NULL));
  CHECK(near(facts(three).area_mm2, 120000) && near(gap, 0));
  DROP(three);
  DROP(one);
  DROP(two);
  CHECK(recloth_piece_split(piece, &beside, "seam", 15, NULL, 0, &one, &two, &error) != RECLOTH_STATUS_OK);
  CHECK(one == NULL && two == NULL);

  /* A dart of 60 at the bottom, 200 deep, then turned to the side, closed, and capped. */
  {
    const recloth_place_t bottom = {0, 150};
    OK(recloth_piece_open_dart(piece, "dart", 150, 200, bottom, 60, top, &one, &error));
    CHECK(facts(one).marks == 1);
    opening.name = "side dart";
    opening.at.edge = 0;
    opening.at.distance = 20;
    opening.share = 1;
    OK(recloth_piece_edge(one, "1", &opening.at.edge, NULL));
    opening.at.distance = side.distance;
    OK(recloth_piece_turn_dart(one, "dart", &opening, 1, &two, &error));
    CHECK(facts(two).marks == 1);
    DROP(two);
    opening.name = NULL;
    FAILS(recloth_piece_turn_dart(one, "dart", &opening, 1, &two, &error), NULL, "name");
    CHECK(error.at == 0);
    OK(recloth_piece_close_dart(one, "dart", opening.at, &two, &error));
    CHECK(facts(two).marks == 0);
    DROP(two);
    OK(recloth_piece_edge(one, "0 1", &edge, NULL));
    OK(recloth_piece_cap_dart(one, "dart", edge, &two, &error));
    DROP(two);
    FAILS(recloth_piece_close_dart(one, "none", opening.at, &two, &error), NO_SOLUTION, "dart");
    DROP(one);
  }
  OK(recloth_piece_slash_and_spread(piece, &slash, 1, &one, &error));
  /* From a hinge: each half swings open by a triangle of 40 on a slash of 400. */
  CHECK(facts(one).area_mm2 > 120000 + 7900 && facts(one).area_mm2 < 120000 + 8100);
  DROP(one);
  OK(recloth_piece_slash_and_spread(piece, &wide, 1, &one, &error));
  CHECK(near(facts(one).area_mm2, 120000 + 40 * 400));
  DROP(one);
  FAILS(recloth_piece_symmetrise(piece, 5, 0, 300, 400, 5, &one, &largest, &edge, &error), OUT_OF_RANGE, "axis");
  {
    /* One side is 2 mm wider at the top. */
    const double worn[] = {0, 0, 150, -10, 300, 0, 302, 400, 150, 500, 0, 400};
    const double allowances[] = {10, 10, 10, 10, 10, 10};
    OK(recloth_piece_from_edges("worn", worn, NULL, allowances, NULL, NULL, NULL, 6, &two, NULL));
    FAILS(recloth_piece_symmetrise(two, 150, -10, 150, 500, 1, &one, &largest, &edge, &error), OUT_OF_RANGE,
          "difference");
    OK(recloth_piece_symmetrise(two, 150, -10, 150, 500, 3, &one, &largest, &edge, &error));
    CHECK(near(largest, 2) && facts(one).fold >= 0);
    DROP(one);
    DROP(two);
  }

  OK(recloth_piece_walk(piece, edges, 1, piece, others, 1, RECLOTH_WAY_AGAINST, &walk, &details, NULL));
  CHECK(walk.length == 300 && walk.difference == 0 && strstr(details, "\"sections\"") != NULL);
  recloth_text_free(details);
  FAILS(recloth_piece_walk(piece, edges, 1, piece, others, 1, 2, &walk, NULL, &error), CHOICE, "way");
  FAILS(recloth_piece_walk(piece, edges, 1, NULL, others, 1, 0, &walk, NULL, &error), NULL, "other");
  FAILS(recloth_piece_mirror(NULL, &one, &error), NULL, "piece");
  FAILS(recloth_piece_mirror(piece, NULL, &error), NULL, "out");
  DROP(piece);
}

/* Lengthened, lined, copied onto, notched and trued up. */
static void derived(void) {
  recloth_piece *piece = rectangle("panel"), *one = NULL, *two = NULL, *pair[2] = {NULL, NULL};
  const recloth_piece *like[2];
  const recloth_place_t from = {1, 0}, to = {1, 400};
  const double side[] = {0, 0, 0, 200, 0, 400}, short_side[] = {0, 0, 0, 390};
  const double slanted[] = {0, 0, 300, 0, 240, 400, 0, 400}, allowances[] = {10, 10, 10, 10};
  const double dart[] = {150, 200, 160, 400, 140, 400};
  const size_t edges[] = {1}, others[] = {3};
  recloth_copied_t fit;
  recloth_error_t error;
  recloth_cut_notch_t notches[4];
  char *report = NULL, *message = NULL;
  size_t count = 0;

  OK(recloth_piece_extend(piece, -10, 200, 310, 200, 50, &one, &error));
  CHECK(near(facts(one).area_mm2, 300 * 450) && near(facts(one).bottom, -50));
  DROP(one);
  FAILS(recloth_piece_extend(piece, -10, 900, 310, 900, 50, &one, &error), NO_SOLUTION, "line");

  OK(recloth_piece_lining(piece,
                          "{\"name\": \"lining\", \"cloth\": \"lining\", \"facings\": [{\"edge\": 2, \"by\": 60}],"
                          " \"ease\": [], \"pleats\": [], \"hem\": \"level\", \"darts\": \"tucks\", \"allowance\": 15,"
                          " \"shell_change_pct\": [0, 0], \"lining_change_pct\": [0, 0]}",
                          &one, &report, &message, &error));
  /* The facing takes 60 of 400. */
  CHECK(near(facts(one).area_mm2, 300 * 340) && strstr(report, "\"seams\"") != NULL);
  recloth_text_free(report);
  report = NULL;
  DROP(one);
  FAILS(recloth_piece_lining(piece, "{}", &one, NULL, &message, &error), INVALID, "json");
  CHECK(message != NULL);
  recloth_text_free(message);
  message = NULL;

  OK(recloth_piece_copy_measured_edge(piece, from, to, "side", side, 3, 0, 0, 0, &one, &fit, &error));
  CHECK(near(facts(one).area_mm2, 120000) && facts(one).edges == 5 && near(fit.length, 400) && fit.gap == 0);
  DROP(one);
  CHECK(recloth_piece_copy_measured_edge(piece, from, to, "side", short_side, 2, 0, 1, 0, &one, &fit, &error) ==
        RECLOTH_STATUS_OUT_OF_RANGE);
  OK(recloth_piece_copy_edge(piece, from, to, piece, from, to, 0, 0, &one, &fit, &error));
  CHECK(near(facts(one).area_mm2, 120000) && near(fit.turn_deg, 0));
  DROP(one);
  /* Half of a dart 20 wide and 200 deep opens towards the side: its upper half leans out by 10 over 200. */
  OK(recloth_piece_copy_opened_edge(piece, from, to, piece, from, to, dart, 0.5, 1, 0, &one, &fit, &error));
  CHECK(near(fit.length, 200 + sqrt(200.0 * 200 + 10 * 10)) && near(fit.gap, 400 - sqrt(400.0 * 400 + 10 * 10)));
  DROP(one);
  FAILS(recloth_piece_copy_opened_edge(piece, from, to, piece, from, to, NULL, 0.5, 1, 0, &one, &fit, &error), NULL, "dart");

  OK(recloth_piece_pair_notches(piece, edges, 1, piece, others, 1, RECLOTH_WAY_AGAINST,
                                "[{\"name\": \"hip\", \"distance\": 100, \"ease\": 0, \"marks\": 1}]", &one, &two,
                                &message, &error));
  OK(recloth_piece_cut_notches(one, 0.1, notches, 4, &count, NULL));
  CHECK(count == 1 && near(notches[0].seam_x, 300));
  OK(recloth_piece_cut_notches(two, 0.1, notches, 4, &count, NULL));
  CHECK(count == 1 && near(notches[0].seam_x, 0));
  OK(recloth_piece_match_notches(one, two, &report, &error));
  CHECK(strstr(report, "hip") != NULL);
  recloth_text_free(report);
  report = NULL;
  DROP(one);
  DROP(two);

  /* A gore whose side leans, sewn to its like: the hems meet in a peak until each is turned by half of it. */
  OK(recloth_piece_from_edges("gore", slanted, NULL, allowances, NULL, NULL, NULL, 4, &one, &error));
  OK(recloth_piece_mirror(one, &two, &error));
  like[0] = one;
  like[1] = two;
  {
    char json[200];
    size_t sewn = 77;
    OK(recloth_piece_edge(two, "1", &sewn, NULL));
    sprintf(json,
            "[{\"seam\": {\"pieces\": [0, 1], \"edges\": [1, %u], \"way\": \"against\", \"end\": \"start\"}}]",
            (unsigned)sewn);
    OK(recloth_true_up(like, 2, json, 50, pair, &report, &message, &error));
  }
  CHECK(facts(pair[0]).area_mm2 != facts(one).area_mm2 && strstr(report, "\"largest\"") != NULL);
  recloth_text_free(report);
  DROP(pair[0]);
  DROP(pair[1]);
  like[1] = NULL;
  FAILS(recloth_true_up(like, 2, "[]", 50, pair, NULL, &message, &error), NULL, "pieces");
  CHECK(error.at == 1 && pair[0] == NULL);
  DROP(one);
  DROP(two);
  DROP(piece);
}

static recloth_panel_facts_t of(const recloth_panel *panel) {
  recloth_panel_facts_t out;
  memset(&out, 0, sizeof out);
  OK(recloth_panel_facts(panel, &out, NULL));
  return out;
}

static void panels(void) {
  const uint32_t starts[] = {0, 0}, ends[] = {1, 2}, sides[] = {0, 0};
  const double from_start[] = {500, 400}, from_end[] = {400, 300};
  const size_t from[] = {1}, to[] = {3};
  const double reading[] = {490}, hole[] = {100, 100, 120, 100, 120, 120, 100, 120};
  const double slit[] = {-10, 300, 310, 300}, losses[] = {10, 10, 10, 10};
  const double stations[] = {0, 400}, left[] = {120, 200}, right[] = {130, 180};
  const double seen[] = {10, 10, 60, 10, 60, 85, 10, 85}, truth[] = {0, 300, 200, 300, 200, 0, 0, 0};
  const double bow[] = {0, 0, 9, 9, 9, 0, 0, 9};
  recloth_panel *panel = NULL, *other = NULL, *parts[4];
  recloth_rectangle_t rectangle;
  recloth_error_t error;
  double misfit = 77, points[64];
  char *json = NULL, *message = NULL;
  size_t count = 77, i;

  OK(recloth_panel_from_triangles("front", 300, starts, ends, from_start, from_end, sides, 2, &panel, &error));
  CHECK(near(of(panel).area_mm2, 120000) && isnan(of(panel).largest_misfit) && of(panel).doubts == 0);
  OK(recloth_panel_with_spares(panel, from, to, reading, 1, &misfit, &other, &error));
  recloth_panel_free(panel);
  CHECK(near(misfit, 10) && near(of(other).largest_misfit, 10) && recloth_doubt_text(of(other).doubts) != NULL);
  OK(recloth_panel_with_grain_between(other, 0, 3, &panel, &error));
  CHECK(near(of(panel).grain_deg, 90));
  recloth_panel_free(other);
  OK(recloth_panel_with_cloth(panel, -90, 2, 1, &other, &error));
  CHECK(of(other).grain_deg == -90 && of(other).faces == 2 && of(other).nap == 1 && of(panel).faces == 1);
  recloth_panel_free(panel);
  FAILS(recloth_panel_with_repeat(other, 80, 0.5, 0, 0, &panel, &error), OUT_OF_RANGE, "across");
  OK(recloth_panel_with_repeat(other, 80, 60, 22, 35, &panel, &error));
  OK(recloth_panel_to_json(panel, &json, NULL));
  CHECK(strstr(json, "\"repeat\":{\"along\":80.0,\"across\":60.0,\"from\":{\"x\":22.0,\"y\":35.0}}") != NULL);
  recloth_text_free(json);
  recloth_panel_free(other);
  OK(recloth_panel_with_repeat(panel, 0, 0, 0, 0, &other, &error));
  recloth_panel_free(panel);
  OK(recloth_panel_to_json(other, &json, NULL));
  CHECK(strstr(json, "repeat") == NULL);
  OK(recloth_panel_from_json(json, &panel, &message, &error));
  CHECK(of(panel).nap == 1 && of(panel).spares == 1 && near(of(panel).largest_misfit, 10) && message == NULL);
  recloth_text_free(json);
  recloth_panel_free(other);
  recloth_panel_free(panel);

  OK(recloth_panel_new("back", RECTANGLE, 4, &panel, &error));
  OK(recloth_panel_with_hole(panel, hole, 4, &other, &error));
  recloth_panel_free(panel);
  OK(recloth_panel_with_flaw(other, "tear", slit, 2, 5, &panel, &error));
  recloth_panel_free(other);
  CHECK(of(panel).holes == 1 && of(panel).flaws == 1 && near(of(panel).area_mm2, 120000 - 400));
  OK(recloth_panel_hole(panel, 0, points, 32, &count, NULL));
  CHECK(count == 4 && points[2] == 120);
  FAILS(recloth_panel_hole(panel, 1, points, 32, &count, &error), NO_SOLUTION, "hole");
  /* Two parts, 280 wide: 285 high with the hole, and 85 high. */
  FAILS(recloth_panel_usable(panel, losses, 4, 0.1, NULL, 0, &count, &error), ROOM, "out");
  CHECK(error.min == 2);
  OK(recloth_panel_usable(panel, losses, 4, 0.1, parts, 4, &count, &error));
  CHECK(count == 2);
  CHECK(near(of(parts[0]).area_mm2, 280 * 285 - 400) && near(of(parts[1]).area_mm2, 280 * 85));
  OK(recloth_panel_outline(parts[1], points, 32, &count, NULL));
  CHECK(count == 4 && near(area(points, 4), 280 * 85));
  OK(recloth_panel_largest_rectangle(parts[1], &rectangle, &error));
  CHECK(near(rectangle.area_mm2, 280 * 85) && rectangle.grain_deg == 90);
  OK(recloth_panel_tallest_rectangle(panel, 300, &rectangle, &error));
  CHECK(rectangle.height > 174.9 && rectangle.height < 175.1);
  FAILS(recloth_panel_tallest_rectangle(panel, 301, &rectangle, &error), NO_SOLUTION, "width");
  FAILS(recloth_panel_usable(panel, losses, 3, 0.1, parts, 4, &count, &error), COUNT, "losses");
  for (i = 0; i < 2; i++) recloth_panel_free(parts[i]);
  recloth_panel_free(panel);

  OK(recloth_panel_from_offsets("sleeve", stations, left, right, 2, &panel, &error));
  CHECK(of(panel).area_mm2 == 126000 && of(panel).left == -200);
  recloth_panel_free(panel);
  OK(recloth_panel_from_photo("yoke", seen, truth, seen, 4, &panel, &error));
  CHECK(near(of(panel).area_mm2, 60000) && of(panel).doubts != 0);
  recloth_panel_free(panel);
  OK(recloth_panel_from_svg_path("pocket", "M0 0H10V20H0z M2 2h2v2h-2z", 10, NAN, 0.1, &panel, &error));
  CHECK(of(panel).holes == 1 && near(of(panel).area_mm2, 20000 - 400));
  recloth_panel_free(panel);
  OK(recloth_panel_from_svg_path("pocket", "M0 0H10V20H0z M2 2", 10, 3, 0.1, &panel, &error));
  CHECK(of(panel).flaws == 1 && of(panel).holes == 0);
  recloth_panel_free(panel);
  panel = NULL;

  FAILS(recloth_panel_from_svg_path("p", "M0 0 L 9", 1, NAN, 0.1, &panel, &error), SYNTAX, "path");
  CHECK(error.at == 8);
  FAILS(recloth_panel_from_svg_path("p", "M0 0H9V9z", 0, NAN, 0.1, &panel, &error), OUT_OF_RANGE, "mm_per_unit");
  FAILS(recloth_panel_new("p", bow, 4, &panel, &error), OUTLINE, "outline");
  FAILS(recloth_panel_new("p", bow, (size_t)-1, &panel, &error), COUNT, "outline");
  FAILS(recloth_panel_new("p", NULL, 4, &panel, &error), NULL, "outline");
  FAILS(recloth_panel_new(NULL, bow, 4, &panel, &error), NULL, "name");
  FAILS(recloth_panel_from_photo("p", bow, truth, seen, 4, &panel, &error), NO_SOLUTION, "picture");
  FAILS(recloth_panel_from_json("[]", &panel, &message, &error), INVALID, "json");
  recloth_text_free(message);
  FAILS(recloth_panel_usable(NULL, losses, 4, 0.1, parts, 4, &count, &error), NULL, "panel");
  CHECK(panel == NULL);
  recloth_panel_free(NULL);
}

static void drafts(void) {
  const char *pocket =
      "{\"patch_pocket\": {\"width\": 150, \"depth\": 170, \"corner_radius\": 0,"
      " \"allowances\": {\"seam\": 10, \"hem\": 30}}}";
  const char *wide =
      "{\"patch_pocket\": {\"width\": 150, \"depth\": 170, \"corner_radius\": 80,"
      " \"allowances\": {\"seam\": 10, \"hem\": 30}}}";
  recloth_piece *piece = NULL;
  recloth_error_t error;
  char *report = NULL, *message = NULL, *lined = NULL;
  size_t count = 77;

  OK(recloth_draft(pocket, &piece, 1, &count, &report, &message, &error));
  CHECK(count == 1 && facts(piece).area_mm2 == 150 * 170 && strstr(report, "\"pieces\"") != NULL && message == NULL);
  recloth_text_free(report);
  DROP(piece);
  report = NULL;
  FAILS(recloth_draft(pocket, NULL, 0, &count, &report, &message, &error), ROOM, "out");
  CHECK(error.min == 1 && report == NULL);
  OK(recloth_draft(pocket, &piece, 1, &count, &report, &message, &error));
  DROP(piece);
  OK(recloth_draft_lining(report,
                          "{\"pieces\": [], \"cloth\": \"lining\", \"facings\": [{\"edge\": \"top\", \"by\": 30}],"
                          " \"ease\": [], \"pleats\": [], \"hem\": \"level\", \"darts\": \"tucks\", \"allowance\": 10,"
                          " \"shell_change_pct\": [0, 0], \"lining_change_pct\": [0, 0]}",
                          &piece, 1, &count, &lined, &message, &error));
  /* The facing takes 30 of 170. */
  CHECK(count == 1 && near(facts(piece).area_mm2, 150 * 140) && strstr(lined, "\"linings\"") != NULL);
  recloth_text_free(lined);
  DROP(piece);
  FAILS(recloth_draft_lining(report, "{}", &piece, 1, &count, NULL, &message, &error), INVALID, "json");
  recloth_text_free(message);
  message = NULL;
  FAILS(recloth_draft_lining(NULL, "{}", &piece, 1, &count, NULL, &message, &error), NULL, "draft");
  recloth_text_free(report);
  report = NULL;
  FAILS(recloth_draft(wide, &piece, 1, &count, NULL, &message, &error), NO_SOLUTION, "corner_radius");
  CHECK(error.max == 75);
  OK(recloth_draft("{\"straight_band\": {\"waist\": 700, \"overlap\": 30, \"depth\": 30, \"turn\": 0,"
                   " \"make\": \"folded\", \"allowance\": 10}}",
                   &piece, 1, &count, NULL, &message, &error));
  /* 730 long, twice 30 deep. */
  CHECK(count == 1 && near(facts(piece).area_mm2, 730 * 60));
  DROP(piece);
  FAILS(recloth_draft("{\"cloak\": {}}", &piece, 1, &count, NULL, &message, &error), INVALID, "json");
  CHECK(message != NULL && strstr(message, "cloak") != NULL && piece == NULL);
  recloth_text_free(message);
}

int main(void) {
  setvbuf(stdout, NULL, _IONBF, 0);
  pieces();
  operations();
  derived();
  panels();
  drafts();
  printf("%d passed, %d failed\n", passed, failed);
  return failed > 0 || passed == 0;
}
