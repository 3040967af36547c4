/* Reads the check values of tests/vectors (id, inputs, status, outputs, tolerance, ...), calls each
 * function through recloth.h and says which rows fail: `vectors check FOLDER`.
 * `vectors answers FOLDER...` prints what each call gives, for comparison with the other doors.
 * Exit status 1 when a row fails or none ran. Written in C99, and compiled as C++17 too. */

#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "recloth.h"

#define CELLS 64
#define ITEMS 4096

typedef struct {
  const char *text;
  double number;
  double *numbers;
  uint32_t *counts;
  size_t count;
} cell_t;

typedef struct {
  char kind; /* n number, c count, t text, l list */
  double number;
  uint64_t whole;
  char text[64];
  double *list;
  size_t count;
} got_t;

typedef struct {
  got_t got[CELLS];
  size_t lists;
  size_t count;
} outcome_t;

typedef struct {
  const char *name;
  const char *kinds; /* an input a letter: n number or count, t text, l list, c list of counts */
  size_t outputs;
  recloth_status (*call)(const cell_t *in, outcome_t *got, recloth_error_t *error);
} function_t;

static void *room(size_t count, size_t size) {
  void *place = calloc(count + 1, size);
  if (place == NULL) {
    fprintf(stderr, "no memory\n");
    exit(2);
  }
  return place;
}

static size_t room_for(double of, int plus) {
  double count = of > 100000 ? 0 : of + plus;
  return count < 0 ? 0 : (size_t)count;
}

static double *got_list(outcome_t *got, size_t count) {
  got_t *place = &got->got[got->count++];
  place->kind = 'l';
  place->list = (double *)room(count, sizeof(double));
  place->count = count;
  return place->list;
}

static void got_number(outcome_t *got, double value) {
  got->got[got->count].kind = 'n';
  got->got[got->count++].number = value;
}

static void got_count(outcome_t *got, uint64_t value) {
  got->got[got->count].kind = 'c';
  got->got[got->count++].whole = value;
}

static void got_text(outcome_t *got, const char *text) {
  got_t *place = &got->got[got->count++];
  place->kind = 't';
  snprintf(place->text, sizeof place->text, "%s", text);
}

static int32_t word(const char *text, const char *const *words) {
  int32_t index = 0;
  for (; words[index] != NULL; index++) {
    if (strcmp(words[index], text) == 0) return index;
  }
  return -1;
}

#include "dispatch.h"

static void free_outcome(outcome_t *outcome) {
  size_t index;
  for (index = 0; index < outcome->count; index++) {
    if (outcome->got[index].kind == 'l') free(outcome->got[index].list);
  }
}

/* Splits one CSV line in place; a quoted cell may hold commas and doubled quotes. */
static size_t split(char *line, char **cells) {
  size_t count = 0;
  char *read = line;
  for (;;) {
    char *write = read;
    char *start = read;
    int quoted = *read == '"';
    int last;
    if (quoted) read++;
    while (*read != '\0' && (quoted || *read != ',')) {
      if (quoted && *read == '"') {
        read++;
        if (*read != '"') {
          quoted = 0;
          continue;
        }
      }
      *write++ = *read++;
    }
    last = *read == '\0';
    if (!last) read++;
    *write = '\0';
    if (count < CELLS) cells[count++] = start;
    if (last) return count;
  }
}

static int read_line(FILE *file, char *line, size_t size) {
  size_t length;
  if (fgets(line, (int)size, file) == NULL) return 0;
  length = strlen(line);
  while (length > 0 && (line[length - 1] == '\n' || line[length - 1] == '\r')) line[--length] = '\0';
  return 1;
}

/* Reads a cell as its kind; lists are allocated. */
static void read_cell(char kind, const char *text, cell_t *cell) {
  const char *place = text;
  char *end = NULL;
  memset(cell, 0, sizeof *cell);
  cell->text = text;
  if (kind == 'n') cell->number = strtod(text, NULL);
  if (kind != 'l' && kind != 'c') return;
  cell->numbers = (double *)room(ITEMS, sizeof(double));
  cell->counts = (uint32_t *)room(ITEMS, sizeof(uint32_t));
  for (;;) {
    double value = strtod(place, &end);
    if (end == place || cell->count == ITEMS) return;
    cell->numbers[cell->count] = value;
    cell->counts[cell->count] = kind == 'c' ? (uint32_t)value : 0;
    cell->count++;
    place = end;
  }
}

static void print_number(double value) {
  uint64_t bits;
  if (isnan(value)) {
    printf("nan");
    return;
  }
  memcpy(&bits, &value, sizeof bits);
  printf("%08lx%08lx", (unsigned long)(bits >> 32), (unsigned long)(bits & 0xffffffffu));
}

/* Digit by digit: not every device's printf knows 64 bits. */
static void print_whole(uint64_t value) {
  if (value >= 10) print_whole(value / 10);
  putchar('0' + (int)(value % 10));
}

static void print_answer(const function_t *function, const char *id, recloth_status status,
                         const outcome_t *outcome, const recloth_error_t *error) {
  size_t index, item;
  printf("%s\t%s\t%d", function->name, id, (int)status);
  if (status != RECLOTH_STATUS_OK) {
    printf("\t%s\t", error->argument);
    if (error->at < 0) printf("-\n");
    else printf("%ld\n", (long)error->at);
    return;
  }
  for (index = 0; index < outcome->count; index++) {
    const got_t *got = &outcome->got[index];
    printf("\t");
    if (got->kind == 'n') print_number(got->number);
    if (got->kind == 'c') print_whole(got->whole);
    if (got->kind == 't') printf("%s", got->text);
    for (item = 0; got->kind == 'l' && item < got->count; item++) {
      if (item > 0) printf(" ");
      print_number(got->list[item]);
    }
  }
  printf("\n");
}

static int close_to(const char *wanted, double got, const char *tolerance) {
  double value = strtod(wanted, NULL);
  if (isnan(value)) return isnan(got);
  if (tolerance[0] == '\0' || strcmp(tolerance, "exact") == 0) return value == got;
  return fabs(value - got) <= strtod(tolerance, NULL);
}

static int list_close_to(const char *wanted, const got_t *got, const char *tolerance) {
  size_t item = 0;
  char *end = NULL;
  for (;; item++) {
    strtod(wanted, &end);
    if (end == wanted) return item == got->count;
    if (item == got->count || !close_to(wanted, got->list[item], tolerance)) return 0;
    wanted = end;
  }
}

/* 1 when the outcome is as the row says. */
static int good(char **wanted, const char *tolerance, const outcome_t *outcome) {
  size_t index;
  for (index = 0; index < outcome->count; index++) {
    const got_t *got = &outcome->got[index];
    int same = 1;
    if (wanted[index][0] == '\0') continue;
    if (got->kind == 'n') same = close_to(wanted[index], got->number, tolerance);
    if (got->kind == 'c') same = strtod(wanted[index], NULL) == (double)got->whole;
    if (got->kind == 't') same = strcmp(wanted[index], got->text) == 0;
    if (got->kind == 'l') same = list_close_to(wanted[index], got, tolerance);
    if (!same) return 0;
  }
  return 1;
}

static size_t rows, failed;

static void one_row(const function_t *function, char **cells, size_t count, int check) {
  size_t inputs = strlen(function->kinds);
  size_t index;
  cell_t in[CELLS];
  outcome_t outcome;
  recloth_error_t error;
  recloth_status status;
  char text[160];
  if (count < inputs + 1 + (check ? function->outputs + 4 : 0)) {
    printf("%s, row %s: too few cells\n", function->name, cells[0]);
    failed++;
    return;
  }
  memset(&outcome, 0, sizeof outcome);
  memset(&error, 0, sizeof error);
  for (index = 0; index < inputs; index++) read_cell(function->kinds[index], cells[index + 1], &in[index]);
  status = function->call(in, &outcome, &error);
  rows++;
  if (!check) {
    print_answer(function, cells[0], status, &outcome, &error);
  } else if (atoi(cells[inputs + 1]) != (int)status) {
    recloth_error_text(&error, text, sizeof text);
    printf("%s, row %s: status %d, not %s (%s)\n", function->name, cells[0], (int)status,
           cells[inputs + 1], text);
    failed++;
  } else if (status != RECLOTH_STATUS_OK) {
    size_t length = strlen(error.argument);
    const char *comment = cells[count - 1];
    if (error.status != (int32_t)status || strncmp(comment, error.argument, length) != 0 ||
        comment[length] != ':') {
      printf("%s, row %s: named %s, not %s\n", function->name, cells[0], error.argument, comment);
      failed++;
    }
  } else if (!good(cells + inputs + 2, cells[inputs + 2 + function->outputs], &outcome)) {
    printf("%s, row %s: another answer than the row: ", function->name, cells[0]);
    print_answer(function, cells[0], status, &outcome, &error);
    failed++;
  }
  for (index = 0; index < inputs; index++) {
    free(in[index].numbers);
    free(in[index].counts);
  }
  free_outcome(&outcome);
}

static void one_file(const function_t *function, const char *folder, int check) {
  static char line[65536];
  char path[1024];
  char *cells[CELLS];
  FILE *file;
  snprintf(path, sizeof path, "%s/%s.csv", folder, function->name);
  file = fopen(path, "r");
  if (file == NULL) {
    printf("%s cannot be read\n", path);
    failed++;
    return;
  }
  read_line(file, line, sizeof line);
  while (read_line(file, line, sizeof line)) {
    if (line[0] != '\0') one_row(function, cells, split(line, cells), check);
  }
  fclose(file);
}

int main(int count, char **words) {
  const function_t *function;
  int index;
  int check = count > 1 && strcmp(words[1], "check") == 0;
  if (count < 3) {
    fprintf(stderr, "vectors check|answers FOLDER...\n");
    return 2;
  }
  for (index = 2; index < count; index++) {
    for (function = functions; function->name != NULL; function++) one_file(function, words[index], check);
  }
  if (check) printf("%lu passed, %lu failed\n", (unsigned long)(rows - failed), (unsigned long)failed);
  return failed > 0 || rows == 0;
}
