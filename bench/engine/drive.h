/* The plant of cases (b) and (c) and its figures: the fluxes on two axes, speed and DC bus, in a frame that turns with the field.
   Figures come from `Runup.Bench.Engine figures b|c`, "name value" a line.                                                     */
#ifndef DRIVE_H
#define DRIVE_H
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#define PLANT 6
#define PI 3.14159265358979323846
#define TS 1e-3
static const double W1 = 2 * PI * 60, rs = 0.087, rr = 0.228, pp = 2, J = 1.662;
static double pls, plr, share_m, load2;
static double ticks_n, stop_tick, acceleration, deceleration, limit, motor_a, slip_hz, lag, clamp_ohm, ov_level, ov_on, bus_f, power, cosphi, slip_share, boost_v, most_v, base_hz, max_hz,
    line_v, choke_ohm, supply_ohm, loss_per_a, own_g, chopper, on_v, off_v, resistor_g;
static struct { const char *name; double *at; } names[] = {{"ticks", &ticks_n}, {"stop_tick", &stop_tick}, {"acceleration", &acceleration}, {"deceleration", &deceleration}, {"limit", &limit}, {"motor_a", &motor_a},
    {"slip_hz", &slip_hz}, {"lag", &lag}, {"clamp_ohm", &clamp_ohm}, {"ov_level", &ov_level}, {"ov_on", &ov_on}, {"bus_f", &bus_f}, {"power", &power}, {"cosphi", &cosphi}, {"slip_share", &slip_share},
    {"boost_v", &boost_v}, {"most_v", &most_v}, {"base_hz", &base_hz}, {"max_hz", &max_hz}, {"line_v", &line_v}, {"choke_ohm", &choke_ohm}, {"supply_ohm", &supply_ohm}, {"loss_per_a", &loss_per_a},
    {"own_g", &own_g}, {"chopper", &chopper}, {"on_v", &on_v}, {"off_v", &off_v}, {"resistor_g", &resistor_g}};
static double peak_v, xb, win, pulse_a, com_g, border_a;
static const double rk = 0.008729, ra = 0.0092, rb = 0.02662;
static int ticks;

static void figures(void) {
    char name[64]; double value;
    while (scanf("%63s %lf", name, &value) == 2)
        for (size_t i = 0; i < sizeof names / sizeof *names; i++) if (!strcmp(name, names[i].name)) *names[i].at = value;
    ticks = (int)ticks_n;
    double Lls = 0.302 / W1, Lm = 13.08 / W1; pls = plr = 1 / Lls; share_m = 1 / (1 / Lm + pls + plr);
    double w = 1705 * PI / 30; load2 = 198 / (w * w);
    peak_v = sqrt(2) * line_v; xb = 6 / PI * sin(PI / 6); win = 1 / (1 - xb); pulse_a = peak_v / (choke_ohm + 2 * supply_ohm);
    double slowest = 1 / (24000 * bus_f), com = 3 / PI * supply_ohm; com_g = 1 / (com > slowest ? com : slowest);
    border_a = pulse_a * rk * (1 + ra + rb);
}

/* What is held between two samples. */
typedef struct { double mq, md, w, loss, g; int on; } held;

static inline double rectifier(double v) {
    double u = win * fmax(1 - v / peak_v, 0), u2 = u * u, u4 = u2 * u2, u8 = u4 * u4;
    return u > 1 ? border_a + com_g * (xb * peak_v - v) : pulse_a * rk * u2 * (1 + ra * u + rb * u8 * u8);
}
static inline double rectifier_slope(double v) {
    double u = win * fmax(1 - v / peak_v, 0), u2 = u * u, u4 = u2 * u2, u8 = u4 * u4;
    return u > 1 ? -com_g : -pulse_a * rk * win / peak_v * u * (2 + 3 * ra * u + 18 * rb * u8 * u8);
}
/* Rates of the plant under what the control has put out. */
static inline void plant_rates(const held *at, const double *x, double *d) {
    double qm = share_m * (x[0] * pls + x[2] * plr), dm = share_m * (x[1] * pls + x[3] * plr);
    double iqs = (x[0] - qm) * pls, ids = (x[1] - dm) * pls, iqr = (x[2] - qm) * plr, idr = (x[3] - dm) * plr;
    double slip = at->w - pp * x[4];
    d[0] = at->mq * x[5] - rs * iqs - at->w * x[1];
    d[1] = at->md * x[5] + at->w * x[0] - rs * ids;
    d[2] = -rr * iqr - slip * x[3];
    d[3] = slip * x[2] - rr * idr;
    d[4] = (1.5 * pp * (x[2] * idr - x[3] * iqr) - load2 * x[4] * x[4]) / J;
    d[5] = (rectifier(x[5]) - 1.5 * (at->mq * iqs + at->md * ids) - at->g * x[5] - at->loss) / bus_f;
}
static void currents(const double *x, double *q, double *d) {
    double qm = share_m * (x[0] * pls + x[2] * plr), dm = share_m * (x[1] * pls + x[3] * plr);
    *q = (x[0] - qm) * pls; *d = (x[1] - dm) * pls;
}
static double current(const double *x) { double q, d; currents(x, &q, &d); return sqrt(0.5 * (q * q + d * d)); }
/* And their derivatives with what is held; what is not written here is zero. */
static inline void plant_jacobian(const held *at, const double *x, double m[PLANT][PLANT]) {
    memset(m, 0, PLANT * sizeof *m);
    double slip = at->w - pp * x[4], ss = pls * (1 - share_m * pls), sr = -share_m * pls * plr, rrd = plr * (1 - share_m * plr);
    double k = 1.5 * pp / J, b = 1.5 / bus_f;
    m[0][0] = -rs * ss; m[0][1] = -at->w; m[0][2] = -rs * sr; m[0][5] = at->mq;
    m[1][0] = at->w; m[1][1] = -rs * ss; m[1][3] = -rs * sr; m[1][5] = at->md;
    m[2][0] = -rr * sr; m[2][2] = -rr * rrd; m[2][3] = -slip; m[2][4] = pp * x[3];
    m[3][1] = -rr * sr; m[3][2] = slip; m[3][3] = -rr * rrd; m[3][4] = -pp * x[2];
    m[4][0] = -k * x[3] * sr; m[4][1] = k * x[2] * sr; m[4][2] = k * sr * x[1]; m[4][3] = -k * sr * x[0]; m[4][4] = -2 * load2 * x[4] / J;
    m[5][0] = -b * at->mq * ss; m[5][1] = -b * at->md * ss; m[5][2] = -b * at->mq * sr; m[5][3] = -b * at->md * sr; m[5][5] = (rectifier_slope(x[5]) - at->g) / bus_f;
}
static inline double clamp(double x, double low, double high) { return fmin(fmax(x, low), high); }
#endif
