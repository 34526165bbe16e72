/* Cases (b) and (c), the control sampled: an induction motor of 50 hp on a drive with its control and DC bus. Start on a ramp that meets the current limit, 0.5 s or more
   at speed, stop: (b) with overvoltage control, (c) with a chopper on a bus made stiff by a supply of little reactance. Slip compensation in both.
   The control is what a drive's is: sampled each millisecond, its outputs held between. Every method so stops at the samples, which are events of these
   equations; within a millisecond there are the states of the plant (drive.h), and the moments at which the chopper switches. smooth.c has the same control as equations beside the plant's.
   Each method is given the loosest setting that keeps speed within 0.01 rad/s and current within 0.1 A of CVODE at 1e-12, at every sample.

     drive <figures            best times in microseconds: "cvode bdf|adams setting us speed_error current_error", "dp ...", "rk4 ..."
     drive check FILE <figures largest errors of "t speed current" lines in a file: "speed current"
     drive reference <figures  "t speed current" of the reference                                                                  */
#include "peer.h"
#include "dormand.h"

#define N PLANT
static held at;
static void rates(const double *x, double *d) { plant_rates(&at, x, d); }

/* The control: one sample, from the states at its end of the millisecond before. */
typedef struct { double integral, last, slope; int fresh; } keeper;
static struct { double ramp, share, added, last_v, ov_slope, ov_integral, motoring_s; int fresh, ov_active, chopper_on, begun; keeper up, down; } c;
static double keep(keeper *k, double x, double lim, double most_up, double most_down) {
    double gain = 80 * slip_hz / motor_a, rise = k->fresh ? 0 : (x - k->last) / TS;
    k->fresh = 0; k->last = x; k->slope += 0.4 * (rise - k->slope);
    k->integral = clamp(k->integral, -most_down, most_up);
    double rate = k->integral + gain * (lim - x - lag * k->slope);
    k->integral = rate < most_up ? k->integral + gain * 10 * TS * (lim - x) : most_up;
    return clamp(rate, -most_down, most_up);
}
static double overvoltage(double v, double watts, double fall) {
    double last = c.ov_slope, rise = c.fresh ? 0 : (v - c.last_v) / TS;
    c.ov_slope += 0.5 * (rise - c.ov_slope);
    double bend = (c.ov_slope - last) / TS;
    c.fresh = 0; c.last_v = v;
    if (!ov_on) return fall;
    double error = ov_level - v, gain = 40 * 40 * bus_f * ov_level * slip_hz / power;
    int begins = !c.ov_active && watts < 0 && !((chopper ? 0 : 0.04) * c.ov_slope < error);
    if (!c.ov_active && !begins) return fall;
    if (begins) { c.ov_integral = 0; c.motoring_s = 0; }
    double rate = c.ov_integral + gain * (error - 0.06 * (c.ov_slope + lag * bend));
    c.ov_integral += gain * 6 * TS * clamp(error, -0.1 * ov_level, 0.04 * ov_level);
    c.motoring_s = watts >= 0 && 0.15 * ov_level < error ? c.motoring_s + TS : 0;
    c.ov_active = c.ov_integral < fall && c.motoring_s < 0.1;
    return clamp(rate, -100 * slip_hz, fall);
}
static void restart(double *x) {
    memset(&c, 0, sizeof c); memset(&at, 0, sizeof at); memset(x, 0, N * sizeof *x);
    x[5] = peak_v; at.g = own_g; c.share = 1; c.fresh = c.up.fresh = c.down.fresh = 1; c.up.integral = c.down.integral = INFINITY;
}
static void sample(const double *x, int tick) {
    double q, d, v = x[5]; currents(x, &q, &d);
    double amps = c.begun ? sqrt(0.5 * (q * q + d * d)) : 0, along = c.begun ? sqrt(0.5) * q : 0, across = c.begun ? sqrt(0.5) * d : 0;
    double oq = at.mq * v, od = at.md * v, volts = sqrt(1.5 * (oq * oq + od * od)), watts = 1.5 * (oq * q + od * d);
    double target = tick < stop_tick ? max_hz : 0, acc = max_hz / acceleration, dec = max_hz / deceleration, most = 100 * slip_hz;
    c.begun = 1;
    double up = keep(&c.up, amps, limit, acc, most), down = keep(&c.down, amps, limit, dec, most);
    double rise = watts < 0 ? acc : up, fall = watts < 0 ? down : dec;
    c.share = clamp(c.share + 20 * TS * (1.15 - amps / limit), 0.02, 1);
    fall = fmin(fall, overvoltage(v, watts, dec));
    double rate = fmax(fmin((target - c.ramp) / TS, rise), -fall);
    c.ramp = clamp(c.ramp + TS * rate, 0, fmax(max_hz, c.ramp));
    double active = volts < 1 ? 0 : watts / (sqrt(3) * volts);
    c.added += TS / 0.1 * (slip_share * slip_hz * clamp(active / (motor_a * cosphi), -2, 2) - c.added);
    double hz = c.ramp > 0 ? fmax(c.ramp + c.added, 0) : 0, part = fmin(c.ramp / base_hz, 1);
    double curve = clamp(most_v * part + boost_v * (1 - part), 0, most_v);
    double from = 1.05 * limit, taken = clamp_ohm * fmax(amps - from, 0) / fmax(amps, from);
    double wq = c.share * curve - taken * along, wd = -taken * across, size = sqrt(wq * wq + wd * wd), top = 0.95 * sqrt(6) / PI * v;
    double scale = sqrt(2.0 / 3) / v * (top < size ? top / size : 1);
    at.mq = wq * scale; at.md = wd * scale; at.w = 2 * PI * hz; at.loss = loss_per_a * amps / v;
    if (chopper) c.chopper_on = x[5] >= (c.chopper_on ? off_v : on_v);
    at.g = own_g + (c.chopper_on ? resistor_g : 0);
}
static double level(void) { return c.chopper_on ? off_v : on_v; }
static int crossed(double v) { return chopper && (c.chopper_on ? v < off_v : v >= on_v); }
static void toggle(void) { c.chopper_on = !c.chopper_on; at.g = own_g + (c.chopper_on ? resistor_g : 0); }

/* Told: the control's outputs of the reference run, straight between the samples, so that nothing makes a solver stop. */
static held *told; static int telling;
static void hear(double t) {
    int k = (int)(t / TS); if (k > ticks - 1) k = ticks - 1;
    double x = t / TS - k; const held *p = &told[k], *q = &told[k + 1];
    at.mq = p->mq + x * (q->mq - p->mq); at.md = p->md + x * (q->md - p->md); at.w = p->w + x * (q->w - p->w); at.loss = p->loss + x * (q->loss - p->loss); at.g = p->g;
}
static int f(realtype t, N_Vector y, N_Vector yd, void *u) { (void)u; if (telling) hear(t); rates(NV_DATA_S(y), NV_DATA_S(yd)); return 0; }
static int root(realtype t, N_Vector y, realtype *g, void *u) { (void)t; (void)u; g[0] = NV_Ith_S(y, 5) - level(); return 0; }
static int jac(realtype t, N_Vector y, N_Vector fy, SUNMatrix M, void *u, N_Vector v1, N_Vector v2, N_Vector v3) {
    (void)fy; (void)u; (void)v1; (void)v2; (void)v3;
    const double *x = NV_DATA_S(y);
    if (telling) hear(t);
    double m[PLANT][PLANT]; plant_jacobian(&at, x, m);
    for (int i = 0; i < N; i++) for (int j = 0; j < N; j++) SM_ELEMENT_D(M, i, j) = m[i][j];
    return 0;
}
static const double scale[N] = {1, 1, 1, 1, 1, 100};
static solver of(int method, double rtol) { peer p = {N, chopper ? 1 : 0, method, 0, f, jac, root, scale, rtol}; return make(&p); }
/* With hint each millisecond begins with a step as the one before found good. */
static int cvode_run(solver *s, int hint, int noting) {
    double *x = NV_DATA_S(s->y); restart(x);
    realtype t = 0, first = 0;
    for (int k = 1; k <= ticks; k++) {
        sample(x, k); t = 0;
        if (told && noting > 1) told[k - 1] = told[k] = at;
        CVodeReInit(s->mem, 0, s->y);
        CVodeSetInitStep(s->mem, hint ? first : 0);
        for (int flag = CV_ROOT_RETURN; flag == CV_ROOT_RETURN;) {
            CVodeSetStopTime(s->mem, TS);
            flag = CVode(s->mem, TS, s->y, &t, CV_NORMAL);
            if (flag < 0) return 0;
            if (flag == CV_ROOT_RETURN) { toggle(); CVodeReInit(s->mem, t, s->y); }
        }
        if (hint) { realtype h; CVodeGetActualInitStep(s->mem, &h); long n; CVodeGetNumSteps(s->mem, &n); first = n <= 3 ? fmin(2 * h, TS) : h; }
        if (noting) note(k, x);
    }
    return 1;
}
/* Over all of it at once; speed and current at every sample by the solver's own interpolation. */
static int told_run(solver *s, int noting) {
    double *x = NV_DATA_S(s->y); restart(x); telling = 1;
    realtype t = 0; int flag = 0;
    CVodeReInit(s->mem, 0, s->y); CVodeSetStopTime(s->mem, ticks * TS);
    if (!noting) flag = CVode(s->mem, ticks * TS, s->y, &t, CV_NORMAL);
    else for (int k = 1; k <= ticks && flag >= 0; k++) { flag = CVode(s->mem, k * TS, s->y, &t, CV_NORMAL); note(k, x); }
    telling = 0; return flag >= 0;
}
static inline void rk4_step(double *x, double h) {
    double k1[N], k2[N], k3[N], k4[N], y[N];
    rates(x, k1); for (int j = 0; j < N; j++) y[j] = x[j] + 0.5 * h * k1[j];
    rates(y, k2); for (int j = 0; j < N; j++) y[j] = x[j] + 0.5 * h * k2[j];
    rates(y, k3); for (int j = 0; j < N; j++) y[j] = x[j] + h * k3[j];
    rates(y, k4); for (int j = 0; j < N; j++) x[j] += h / 6 * (k1[j] + 2 * (k2[j] + k3[j]) + k4[j]);
}
static double dp_next;
#define TRY(from, to, h, first) dp_try(N, rates, scale, from, to, k, h, rtol, first)
/* Where a step crosses the chopper's level it is taken again up to there; the bus is all but straight within it, so two secants do. */
static double to_level(const double *x, const double *y, double h) { return h * clamp((level() - x[5]) / (y[5] - x[5]), 0, 1); }
static int dp_run(double rtol, int noting) {
    double x[N], y[N], z[N]; dp_states k[7]; restart(x); dp_next = 1e-4;
    for (int tick = 1; tick <= ticks; tick++) {
        sample(x, tick);
        double t = 0; int first = 0;
        while (t < TS) {
            int last = t + dp_next >= TS - 1e-15; double h = last ? TS - t : dp_next;
            double err = TRY(x, y, h, first);
            if (!isfinite(err)) return 0;
            double g = dp_growth(err);
            if (err <= 1) {
                if (crossed(y[5])) {
                    double part = to_level(x, y, h); memcpy(z, x, sizeof x);
                    TRY(x, y, part, 1);
                    part *= clamp((level() - z[5]) / (y[5] - z[5]), 0, 2); TRY(x, y, part, 1);
                    memcpy(x, y, sizeof x); t += part; toggle(); first = 0; continue;
                }
                t = last ? TS : t + h; memcpy(x, y, sizeof x); memcpy(k[0], k[6], sizeof x); first = 1;
            }
            if (err > 1) { dp_next = h * g; first = 1; } else if (!last) dp_next = h * g; else dp_next = fmax(dp_next, h * g);
        }
        if (noting) note(tick, x);
    }
    volatile double keep_it = x[4]; (void)keep_it; return 1;
}
static int rk4_run(int steps, int noting) {
    double x[N], y[N], h = TS / steps; restart(x);
    for (int tick = 1; tick <= ticks; tick++) {
        sample(x, tick);
        for (int i = 0; i < steps; i++) {
            memcpy(y, x, sizeof x); rk4_step(x, h);
            if (crossed(x[5])) {
                double part = to_level(y, x, h); double z[N]; memcpy(z, y, sizeof z); rk4_step(z, part);
                part *= clamp((level() - y[5]) / (z[5] - y[5]), 0, 2); memcpy(x, y, sizeof x); rk4_step(x, part); toggle(); rk4_step(x, h - part);
            }
        }
        if (noting) note(tick, x);
    }
    volatile double keep_it = x[4]; (void)keep_it; return isfinite(x[4]);
}

/* Every setting of a scan that keeps the errors is timed; the quickest of each method is printed. */
static const char *method_names[] = {"cvode bdf", "cvode adams", "cvode bdf-hint", "cvode adams-hint", "dp", "rk4"};
static int run_by(int method, solver *s, double set, int noting) {
    return method < 4 ? cvode_run(s, method / 2, noting) : method == 4 ? dp_run(set, noting) : rk4_run((int)set, noting);
}
static void scan(int method) {
    finest best = none; double ew, ei;
    for (int step = 0, met = 0; step < 24 && met < 4; step++) {
        double set = method == 5 ? step + 1 : 1e-2 * pow(10, -step / 3.0);
        solver s = of(method % 2 ? CV_ADAMS : CV_BDF, set);
        if (run_by(method, &s, set, 1) && within(&ew, &ei)) {
            double us = MEDIAN_US(run_by(method, &s, set, 0)); met++;
            if (us < best.us) best = (finest){us, set, ew, ei};
        }
        drop(&s);
    }
    print(method_names[method], &best);
}
/* CVODE without a stop, the control known to it beforehand: what it needs for the plant alone. Held against itself at 1e-12. */
static void scan_told(const char *name, int method) {
    finest best = none; double ew, ei;
    for (int step = 0; step < 28; step++) {
        double set = 1e-2 * pow(10, -step / 4.0);
        solver s = of(method, set);
        if (told_run(&s, 1) && within(&ew, &ei)) {
            double us = MEDIAN_US(told_run(&s, 0));
            if (us < best.us) best = (finest){us, set, ew, ei};
        }
        drop(&s);
    }
    print(name, &best);
}
int main(int argc, char **argv) {
    figures(); make_notes();
    told = calloc(ticks + 2, sizeof *told);
    solver s = of(CV_BDF, 1e-12); cvode_run(&s, 0, 2); drop(&s); take_as_reference();
    if (argc > 2 && !strcmp(argv[1], "check")) {
        double ew, ei;
        if (!notes_from(argv[2])) return 1;
        errors(&ew, &ei); printf("%.3g %.3g\n", ew, ei); return 0;
    }
    if (argc > 1 && !strcmp(argv[1], "reference")) { for (int k = 1; k <= ticks; k++) printf("%.4f %.12g %.12g\n", k * TS, ref_w[k], ref_i[k]); return 0; }
    for (int method = 0; method < 6; method++) scan(method);
    if (chopper) return 0;
    s = of(CV_BDF, 1e-12); told_run(&s, 1); drop(&s); take_as_reference();
    scan_told("told bdf", CV_BDF); scan_told("told adams", CV_ADAMS);
    return 0;
}
