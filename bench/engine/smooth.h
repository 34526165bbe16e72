/* The control of drive.c as equations beside the plant's: no sample, so that a solver goes on without a stop but for true events. The gains and time constants are the same.
   A filter s += a(x - s) at each sample stands as ds/dt = (x - s)/T of the same mean delay, T = (1/a - 1/2)·TS; integrals and the ramp stand as what they are; a rise between two samples
   stands as the slope of its filter, (x - s)/T, the bend of the bus by the bus's own rate; outputs follow at once. What is held for a millisecond stands for its middle: ramp and stop order
   come half a sample early.
   The whole voltage is never lowered in these runs (the current stays below 115 % of the limit, which is checked). The limiter's two integrals, motoring and regenerating, fall short of
   the ramp's rates by the same, and are one state.
   True events: the limiter lets go (its integral is set anew), overvoltage control begins and ends, the chopper switches, the order to stop.                                      */
#ifndef SMOOTH_H
#define SMOOTH_H
#include "drive.h"

/* States beyond the plant's: filter of the current, what the limiter's integral is short of the ramp's rate, ramp, slip compensation; with overvoltage control its filter and integral. */
enum { SPEED = 4, BUS = 5, AMPS = 6, SHORT = 7, RAMP = 8, ADDED = 9, BUS_SEEN = 10, OV = 11, STATES = 12, WITHOUT_OV = 10 };
static const double amps_t = (1 / 0.4 - 0.5) * TS, bus_t = (1 / 0.5 - 0.5) * TS, added_t = (0.1 / TS - 0.5) * TS;
static double acc, dec, most, gain, ov_gain;

/* What is no state: the order, and what is at work. The limiter's integral is full, at the ramp's rate, from where it is set anew until it has fallen and the current with it; the clock runs while the motor takes power and the bus is well down. */
static struct { double target; int full, ov, clock_runs, chopper_on; double since; } mode;
static void restart(double *x) {
    acc = max_hz / acceleration; dec = max_hz / deceleration; most = 100 * slip_hz; gain = 80 * slip_hz / motor_a; ov_gain = 40 * 40 * bus_f * ov_level * slip_hz / power;
    memset(x, 0, STATES * sizeof *x); memset(&mode, 0, sizeof mode);
    x[BUS] = x[BUS_SEEN] = peak_v; x[RAMP] = 0.5 * TS * acc; mode.target = max_hz; mode.full = 1;
}

/* What the control sees and puts out. */
typedef struct { double q, d, amps, along, across, taken, wq, wd, size, top, vq, vd, watts, active, over, error, slope; held put; } seen;
static inline void look(const double *x, seen *s) {
    double v = x[BUS], part = fmin(x[RAMP] / base_hz, 1), from = 1.05 * limit;
    currents(x, &s->q, &s->d);
    s->amps = sqrt(0.5 * (s->q * s->q + s->d * s->d)); s->along = sqrt(0.5) * s->q; s->across = sqrt(0.5) * s->d;
    s->taken = clamp_ohm * fmax(s->amps - from, 0) / fmax(s->amps, from);
    s->wq = clamp(most_v * part + boost_v * (1 - part), 0, most_v) - s->taken * s->along; s->wd = -s->taken * s->across;
    s->size = sqrt(s->wq * s->wq + s->wd * s->wd); s->top = 0.95 * sqrt(6) / PI * v;
    double peak = sqrt(2.0 / 3) * (s->top < s->size ? s->top / s->size : 1);
    s->vq = peak * s->wq; s->vd = peak * s->wd; s->watts = 1.5 * (s->vq * s->q + s->vd * s->d); s->active = (s->wq * s->along + s->wd * s->across) / s->size;
    s->over = x[SHORT] + gain * (limit - s->amps - lag * (s->amps - x[AMPS]) / amps_t);
    s->error = ov_level - v; s->slope = (v - x[BUS_SEEN]) / bus_t;
    s->put = (held){s->vq / v, s->vd / v, 2 * PI * fmax(x[RAMP] + x[ADDED], 0), loss_per_a * s->amps / v, own_g + (mode.chopper_on ? resistor_g : 0), 0};
}
static inline int integrates(const seen *s) { return s->over < 0 && (!mode.full || s->amps > limit); }
static inline double wanted_slip(const seen *s) { return s->active / (motor_a * cosphi); }
static inline double fall_by_bus(const double *x, const seen *s, double bus_rate) { return x[OV] + ov_gain * (s->error - 0.06 * (s->slope + lag / bus_t * (bus_rate - s->slope))); }

/* The ramp's rate, and by whom it is set. */
typedef enum { FREE, TO_TARGET, BY_LIMIT_UP, BY_LIMIT_DOWN, BY_BUS } setter;
static inline double ramp_rate(const double *x, const seen *s, double bus_rate, setter *by) {
    double held = clamp(s->over, -most, 0), rise = acc, fall = dec, to = (mode.target - x[RAMP]) / TS;
    setter up = FREE, down = FREE;
    if (s->watts >= 0) { rise += held; if (held < 0) up = BY_LIMIT_UP; } else { fall += held; if (held < 0) down = BY_LIMIT_DOWN; }
    if (mode.ov) { double other = fmax(fall_by_bus(x, s, bus_rate), -most); if (other < fall) { fall = other; down = BY_BUS; } }
    if (to < rise) { rise = to; up = TO_TARGET; }
    *by = rise > -fall ? up : down;
    return fmax(rise, -fall);
}
static inline void smooth_rates(const double *x, double *r) {
    seen s; setter by; look(x, &s);
    plant_rates(&s.put, x, r);
    r[AMPS] = (s.amps - x[AMPS]) / amps_t;
    r[SHORT] = integrates(&s) ? 10 * gain * (limit - s.amps) : 0;
    r[RAMP] = ramp_rate(x, &s, r[BUS], &by);
    r[ADDED] = (slip_share * slip_hz * clamp(wanted_slip(&s), -2, 2) - x[ADDED]) / added_t;
    r[BUS_SEEN] = s.slope;
    r[OV] = mode.ov ? 6 * ov_gain * clamp(s.error, -0.1 * ov_level, 0.04 * ov_level) : 0;
}

/* The derivatives of these rates: gradients of what is seen and put out, then row by row. */
static void smooth_jacobian(const double *x, double m[STATES][STATES]) {
    seen s; setter by; look(x, &s);
    double v = x[BUS], plant[PLANT][PLANT], r[PLANT];
    memset(m, 0, STATES * sizeof *m);
    plant_jacobian(&s.put, x, plant); plant_rates(&s.put, x, r);
    for (int i = 0; i < PLANT; i++) memcpy(m[i], plant[i], sizeof plant[i]);
    double ss = pls * (1 - share_m * pls), sr = -share_m * pls * plr, q[STATES] = {ss, 0, sr}, d[STATES] = {0, ss, 0, sr}, amps[STATES] = {0}, over[STATES] = {0};
    double per_amp = s.amps > 1e-9 ? 0.5 / s.amps : 0, from = 1.05 * limit, steeper = s.amps > from ? clamp_ohm * from / (s.amps * s.amps) : 0, peak = sqrt(2.0 / 3), low = s.top < s.size;
    for (int j = 0; j < STATES; j++) {
        amps[j] = per_amp * (s.q * q[j] + s.d * d[j]);
        over[j] = -gain * (1 + lag / amps_t) * amps[j] + (j == AMPS ? gain * lag / amps_t : j == SHORT);
        double wq = -steeper * amps[j] * s.along - s.taken * sqrt(0.5) * q[j] + (j == RAMP && x[RAMP] < base_hz ? (most_v - boost_v) / base_hz : 0);
        double wd = -steeper * amps[j] * s.across - s.taken * sqrt(0.5) * d[j];
        double size = (s.wq * wq + s.wd * wd) / s.size, top = j == BUS ? s.top / v : 0;
        double vq = peak * (low ? (s.top * wq + s.wq * (top - s.top * size / s.size)) / s.size : wq), vd = peak * (low ? (s.top * wd + s.wd * (top - s.top * size / s.size)) / s.size : wd);
        double active = (wq * s.along + wd * s.across + sqrt(0.5) * (s.wq * q[j] + s.wd * d[j]) - s.active * size) / s.size;
        double bus = j == BUS, mq = (vq - bus * s.put.mq) / v, md = (vd - bus * s.put.md) / v, w = j == RAMP || j == ADDED ? 2 * PI * (s.put.w > 0) : 0, loss = (loss_per_a * amps[j] - bus * s.put.loss) / v;
        m[0][j] += v * mq - x[1] * w; m[1][j] += v * md + x[0] * w; m[2][j] -= x[3] * w; m[3][j] += x[2] * w;
        m[BUS][j] -= (1.5 * (s.q * mq + s.d * md) + loss) / bus_f;
        m[AMPS][j] = (amps[j] - (j == AMPS)) / amps_t;
        m[SHORT][j] = integrates(&s) ? -10 * gain * amps[j] : 0;
        m[ADDED][j] = ((fabs(wanted_slip(&s)) < 2 ? slip_share * slip_hz * active / (motor_a * cosphi) : 0) - (j == ADDED)) / added_t;
        m[BUS_SEEN][j] = (bus - (j == BUS_SEEN)) / bus_t;
    }
    m[OV][BUS] = mode.ov && s.error > -0.1 * ov_level && s.error < 0.04 * ov_level ? -6 * ov_gain : 0;
    double rate = ramp_rate(x, &s, r[BUS], &by), bend = 0.06 * ov_gain * lag / bus_t, slope = 0.06 * ov_gain * (1 - lag / bus_t);
    for (int j = 0; j < STATES; j++)
        m[RAMP][j] = by == TO_TARGET ? (j == RAMP ? -1 / TS : 0)
            : by == BY_LIMIT_UP ? (s.over > -most ? over[j] : 0)
            : by == BY_LIMIT_DOWN ? (s.over > -most ? -over[j] : 0)
            : by == BY_BUS && rate < most ? bend * m[BUS][j] + slope * m[BUS_SEEN][j] + (j == BUS ? ov_gain : 0) - (j == OV) : 0;
}

/* Events, each watched as a function through zero. With kinks also those moments are met at which the equations only bend. */
enum { LET_GO, BELOW, OV_EDGE, CLOCK, OV_OVER, CHOP, ARRIVE, CLAMPS, EVENTS };
static int watched[EVENTS], watched_n;
static void watch_events(int kinks) {
    watched_n = 0; watched[watched_n++] = LET_GO; watched[watched_n++] = BELOW;
    if (ov_on) { watched[watched_n++] = OV_EDGE; watched[watched_n++] = CLOCK; watched[watched_n++] = OV_OVER; }
    if (chopper) watched[watched_n++] = CHOP;
    if (kinks) { watched[watched_n++] = ARRIVE; watched[watched_n++] = CLAMPS; }
}
static void event_functions(double t, const double *x, double *g) {
    seen s; look(x, &s);
    for (int i = 0; i < watched_n; i++)
        switch (watched[i]) {
        case LET_GO: g[i] = s.over; break;
        case BELOW: g[i] = limit - s.amps; break;
        case OV_EDGE: g[i] = mode.ov ? x[OV] - dec : fmin(0.04 * s.slope - s.error, -1e-3 * s.watts); break;
        case CLOCK: g[i] = fmin(s.error - 0.15 * ov_level, 1e-3 * s.watts); break;
        case OV_OVER: g[i] = mode.clock_runs ? t - mode.since - 0.1 : -1; break;
        case CHOP: g[i] = x[BUS] - (mode.chopper_on ? off_v : on_v); break;
        case ARRIVE: g[i] = x[RAMP] - mode.target + TS * acc; break;
        default: g[i] = s.amps - 1.05 * limit;
        }
}
/* Which way the function must go: +1 up, 0 either. */
static int event_direction(int which, int kinks) { return which == BELOW || which == OV_EDGE || which == OV_OVER || (which == LET_GO && !kinks); }
/* What an event does; 1 where the equations change, so that a solver begins anew. */
static int happen(int which, int upward, double t, double *x, int kinks) {
    switch (which) {
    case LET_GO: { int held = upward && x[SHORT] < 0; if (held) { x[SHORT] = 0; mode.full = 1; } return held || kinks; }
    case BELOW: if (x[SHORT] < 0) mode.full = 0; return 0;
    case OV_EDGE: mode.ov = !mode.ov; mode.clock_runs = 0; x[OV] = 0; return 1;
    case CLOCK: mode.clock_runs = mode.ov && upward; mode.since = t; return 0;
    case OV_OVER: mode.ov = mode.clock_runs = 0; return 1;
    case CHOP: mode.chopper_on = !mode.chopper_on; return 1;
    default: return 1;
    }
}
#endif
