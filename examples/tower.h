/* What the controller of Tollbrae roof needs, made by leat plan header.
   Over the plan's file: --set cap_sensor={wet: 1350, dry: 2750}
   Over the plan's file: --set timing=[{run: 90 s, rest: 12 min}, {run: 60 s, rest: 25 min,
     from: "22:00", to: "06:00", months: [6, 7], days: [mon, tue]}]
   Taken: edges exact; fixed resistor 1 %; ADC good to 3 counts; water 20 C; wall 0.0015 mm,
     smooth tube.
   C99; it needs stdint.h alone. */
#ifndef TOWER_H
#define TOWER_H

#include <stdint.h>

#define TOWER_PLAN_SHA256 "b626cfecfaf9bac14b9540dd3eb6a9edd22160006aa6553d4908124226ae429d" /* of the plan, as sha256sum */
#define TOWER_FULL_ML 77718UL /* mL, when full */
#define TOWER_LOW_ML 24120UL /* mL, at the refill mark */

/* The sender: counts of the ADC to a step and its litres. */
#define TOWER_HAS_SENDER 1
#define TOWER_ADC_TOP 4095UL /* highest count */
#define TOWER_CUTOFF_COUNTS 755UL /* the pump may run at this count or more, faults left out */

enum tower_status {
  TOWER_OK,
  TOWER_BETWEEN_STEPS,
  TOWER_AMBIGUOUS,
  TOWER_OK_OR_SHORT,
  TOWER_OPEN,
  TOWER_SHORT,
  TOWER_UNDER_RANGE,
  TOWER_OVER_RANGE,
  TOWER_NO_READING,
};

typedef struct {
  uint32_t last;    /* the row holds up to this count */
  uint8_t status;   /* enum tower_status */
  uint8_t fault;    /* 1: a fault of the sender or its wires */
  uint8_t sure;     /* 1: the refill mark or more for sure, the pump may run */
  int16_t step_low; /* lowest step it may be, 0 is the bottom one; -1 without litres */
  int16_t step_high;
  uint32_t low_mL;  /* the tank holds at least this; 0 without litres */
  uint32_t high_mL; /* and at most this */
} tower_reading;

static const tower_reading tower_readings[] = {
  {45UL, TOWER_SHORT, 1, 0, -1, -1, 0UL, 0UL},
  {180UL, TOWER_UNDER_RANGE, 1, 0, -1, -1, 0UL, 0UL},
  {249UL, TOWER_OK, 0, 0, 0, 0, 0UL, 20100UL},
  {401UL, TOWER_BETWEEN_STEPS, 0, 0, 0, 1, 0UL, 26000UL},
  {471UL, TOWER_OK, 0, 0, 1, 1, 19202UL, 26000UL},
  {754UL, TOWER_BETWEEN_STEPS, 0, 0, 1, 2, 19202UL, 31900UL},
  {824UL, TOWER_OK, 0, 1, 2, 2, 25087UL, 31900UL},
  {1051UL, TOWER_BETWEEN_STEPS, 0, 1, 2, 3, 25087UL, 37900UL},
  {1120UL, TOWER_OK, 0, 1, 3, 3, 30972UL, 37900UL},
  {1300UL, TOWER_BETWEEN_STEPS, 0, 1, 3, 4, 30972UL, 44000UL},
  {1367UL, TOWER_OK, 0, 1, 4, 4, 36957UL, 44000UL},
  {1503UL, TOWER_BETWEEN_STEPS, 0, 1, 4, 5, 36957UL, 50100UL},
  {1568UL, TOWER_OK, 0, 1, 5, 5, 43042UL, 50100UL},
  {1684UL, TOWER_BETWEEN_STEPS, 0, 1, 5, 6, 43042UL, 56300UL},
  {1751UL, TOWER_OK, 0, 1, 6, 6, 49126UL, 56300UL},
  {1841UL, TOWER_BETWEEN_STEPS, 0, 1, 6, 7, 49126UL, 62600UL},
  {1909UL, TOWER_OK, 0, 1, 7, 7, 55311UL, 62600UL},
  {1961UL, TOWER_BETWEEN_STEPS, 0, 1, 7, 8, 55311UL, 69000UL},
  {2029UL, TOWER_OK, 0, 1, 8, 8, 61596UL, 69000UL},
  {2068UL, TOWER_BETWEEN_STEPS, 0, 1, 8, 9, 61596UL, 75500UL},
  {2137UL, TOWER_OK, 0, 1, 9, 9, 67980UL, 75500UL},
  {2166UL, TOWER_BETWEEN_STEPS, 0, 1, 9, 10, 67980UL, 96331UL},
  {2234UL, TOWER_OK, 0, 1, 10, 10, 74464UL, 96331UL},
  {3471UL, TOWER_OVER_RANGE, 1, 0, -1, -1, 0UL, 0UL},
  {4095UL, TOWER_OPEN, 1, 0, -1, -1, 0UL, 0UL},
  {4294967295UL, TOWER_NO_READING, 0, 0, -1, -1, 0UL, 0UL},
};

/* What a count says. Take the median of some readings, the pump at rest. */
static inline const tower_reading *tower_read(uint32_t counts) {
  const tower_reading *row = tower_readings;
  if (counts > TOWER_ADC_TOP) {
    counts = 0xFFFFFFFFUL;
  }
  while (counts > row->last) {
    row++;
  }
  return row;
}

/* The middle of what it may be, mL; 0 without litres. */
static inline uint32_t tower_volume_mL(uint32_t counts) {
  const tower_reading *row = tower_read(counts);
  return row->low_mL + (row->high_mL - row->low_mL) / 2;
}

/* Whether the pump may run; every doubt and every fault says no. */
static inline int tower_may_run(uint32_t counts) {
  return tower_read(counts)->sure;
}

/* The sensor in the cap. */
#define TOWER_HAS_CAP 1
#define TOWER_CAP_WET_COUNTS 2050UL /* water runs at this or fewer */
#define TOWER_CAP_DRY_COUNTS 2470UL /* the cap is dry at this or more */

/* Counts between the two say nothing yet. */
static inline int tower_cap_is_wet(uint32_t counts) {
  return counts <= TOWER_CAP_WET_COUNTS;
}
static inline int tower_cap_is_dry(uint32_t counts) {
  return counts >= TOWER_CAP_DRY_COUNTS;
}

/* Seconds from the start of the pump until water is at the cap, the tank at its
   refill mark, and until a dry cap may be called a failure; 0: it never comes. */
typedef struct {
  uint32_t wet_ms;
  uint16_t judge_s;
} tower_cap_wait;

#define TOWER_TOWERS 2
static const tower_cap_wait tower_cap_waits[] = {
  {0UL, 0}, /* north */
  {1762UL, 4}, /* south */
};

/* Runs and rests; of those that hold the last one is in force. */
#define TOWER_HAS_TIMING 1
#define TOWER_TIMINGS 2

typedef struct {
  uint32_t run_ms;
  uint32_t rest_ms;
  uint32_t from_s;  /* s since 00:00 on the clock's face */
  uint32_t to_s;    /* not included; equal to from_s: the whole day */
  uint16_t months;  /* bit m for month m, 1 to 12 */
  uint8_t weekdays; /* bit d for weekday d, 1 Monday to 7 Sunday */
} tower_timing;

static const tower_timing tower_timings[] = {
  {90000UL, 720000UL, 0UL, 0UL, 0x1ffe, 0xfe},
  {60000UL, 1500000UL, 79200UL, 21600UL, 0xc0, 0x6},
};

static inline int tower_holds(
    const tower_timing *t, uint32_t second, unsigned month, unsigned weekday) {
  if (!(t->months >> month & 1) || !(t->weekdays >> weekday & 1)) {
    return 0;
  }
  if (t->from_s == t->to_s) {
    return 1;
  }
  if (t->from_s < t->to_s) {
    return second >= t->from_s && second < t->to_s;
  }
  return second >= t->from_s || second < t->to_s;
}

/* The timing in force; second of the local clock (0 to 86399), month 1 to 12, weekday 1 Monday. */
static inline const tower_timing *tower_timing_at(
    uint32_t second, unsigned month, unsigned weekday) {
  int i = TOWER_TIMINGS - 1;
  while (i > 0 && !tower_holds(&tower_timings[i], second, month, weekday)) {
    i--;
  }
  return &tower_timings[i];
}

/* Longest rests of the pump, s. */
#define TOWER_DRY_DAY_S 1800UL /* by day */
#define TOWER_DRY_NIGHT_S 3600UL /* by night */
#define TOWER_DRY_ALARM_S 2700UL /* raise an alarm after it */
#define TOWER_NIGHT_FROM_S 79200UL /* s since 00:00 */
#define TOWER_NIGHT_TO_S 21600UL /* not included */

static inline uint32_t tower_longest_rest_s(uint32_t second) {
  int night = second >= TOWER_NIGHT_FROM_S || second < TOWER_NIGHT_TO_S;
  return night ? TOWER_DRY_NIGHT_S : TOWER_DRY_DAY_S;
}

/* The EC meter. */
#define TOWER_EC_SLOPE 1.037f /* true EC over shown EC */
static inline float tower_true_ec(float shown) {
  return TOWER_EC_SLOPE * shown;
}

/* The pH meter. */
#define TOWER_PH_OFFSET (-0.1f) /* true pH less shown pH */
static inline float tower_true_ph(float shown) {
  return shown + TOWER_PH_OFFSET;
}

#endif
