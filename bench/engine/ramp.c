/* Case (a): an induction motor of 50 hp with its machine on a V/f ramp, 0 to 60 Hz in 2 s and 1 s there, in a frame that turns
   with the field. SUNDIALS CVODE (BDF and Adams, analytic Jacobian), Dormand-Prince 5(4) and classical Runge-Kutta in plain C.
   Each is given the loosest setting that keeps speed within 0.01 rad/s and current within 0.1 A of CVODE at 1e-12.

     ramp            best times in microseconds: "cvode bdf|adams rtol us speed_error current_error", "dp ...", "rk4 ..."
     ramp check <points   largest errors of "t speed current" lines against the reference: "speed current"                     */
#include <cvode/cvode.h>
#include <math.h>
#include <nvector/nvector_serial.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sundials/sundials_nonlinearsolver.h>
#include <sunlinsol/sunlinsol_dense.h>
#include <sunmatrix/sunmatrix_dense.h>
#include <sunnonlinsol/sunnonlinsol_fixedpoint.h>
#include <time.h>

#define N 5
#define RAMP_S 2.0
#define END_S 3.0
#define PI 3.14159265358979323846
static const double W1 = 2 * PI * 60, rs = 0.087, rr = 0.228, pp = 2, J = 1.662;
static double Lls, Llr, Lm, pls, plr, share, load2, v0, v1, rampw;
static int rising;

static void figures(void) {
    Lls = Llr = 0.302 / W1; Lm = 13.08 / W1; pls = 1 / Lls; plr = 1 / Llr;
    share = 1 / (1 / Lm + pls + plr);
    double w = 1705 * PI / 30; load2 = 198 / (w * w);
    double top = 460 * sqrt(2.0 / 3); v0 = 0.02 * top; v1 = (top - v0) / W1; rampw = W1 / RAMP_S;
}
static inline double field(double t) { return rising ? rampw * t : W1; }
static inline void rates(double t, const double *x, double *d) {
    double w = field(t), v = v0 + v1 * w;
    double qm = share * (x[0] * pls + x[2] * plr), dm = share * (x[1] * pls + x[3] * plr);
    double iqs = (x[0] - qm) * pls, ids = (x[1] - dm) * pls, iqr = (x[2] - qm) * plr, idr = (x[3] - dm) * plr;
    double slip = w - pp * x[4];
    d[0] = v - rs * iqs - w * x[1];
    d[1] = w * x[0] - rs * ids;
    d[2] = -rr * iqr - slip * x[3];
    d[3] = slip * x[2] - rr * idr;
    d[4] = (1.5 * pp * (x[2] * idr - x[3] * iqr) - load2 * x[4] * x[4]) / J;
}
static double current(const double *x) {
    double qm = share * (x[0] * pls + x[2] * plr), dm = share * (x[1] * pls + x[3] * plr);
    double q = (x[0] - qm) * pls, d = (x[1] - dm) * pls;
    return sqrt(0.5 * (q * q + d * d));
}
static int f(realtype t, N_Vector y, N_Vector yd, void *u) { (void)u; rates(t, NV_DATA_S(y), NV_DATA_S(yd)); return 0; }
static int jac(realtype t, N_Vector y, N_Vector fy, SUNMatrix M, void *u, N_Vector a, N_Vector b, N_Vector c) {
    (void)fy; (void)u; (void)a; (void)b; (void)c;
    const double *x = NV_DATA_S(y);
    double w = field(t), slip = w - pp * x[4];
    double ss = pls * (1 - share * pls), sr = -share * pls * plr, rrd = plr * (1 - share * plr);
    double k = 1.5 * pp / J;
#define E(i, j) SM_ELEMENT_D(M, i, j)
    E(0, 0) = -rs * ss; E(0, 1) = -w; E(0, 2) = -rs * sr;
    E(1, 0) = w; E(1, 1) = -rs * ss; E(1, 3) = -rs * sr;
    E(2, 0) = -rr * sr; E(2, 2) = -rr * rrd; E(2, 3) = -slip; E(2, 4) = pp * x[3];
    E(3, 1) = -rr * sr; E(3, 2) = slip; E(3, 3) = -rr * rrd; E(3, 4) = -pp * x[2];
    E(4, 0) = -k * x[3] * sr; E(4, 1) = k * x[2] * sr; E(4, 2) = k * sr * x[1]; E(4, 3) = -k * sr * x[0]; E(4, 4) = -2 * load2 * x[4] / J;
    return 0;
}

/* The points of a run: t, speed, current. */
static double *points; static int count, room;
static void note(double t, const double *x) {
    if (count == room) { room = room ? 2 * room : 4096; points = realloc(points, room * 3 * sizeof *points); }
    points[3 * count] = t; points[3 * count + 1] = x[4]; points[3 * count + 2] = current(x); count++;
}

typedef struct { void *mem; N_Vector y; SUNContext ctx; SUNMatrix A; SUNLinearSolver L; SUNNonlinearSolver nls; } solver;
static solver make(int lmm, double rtol) {
    solver s; memset(&s, 0, sizeof s);
    SUNContext_Create(NULL, &s.ctx);
    s.y = N_VNew_Serial(N, s.ctx); N_VConst(0, s.y);
    s.mem = CVodeCreate(lmm, s.ctx);
    CVodeInit(s.mem, f, 0, s.y);
    CVodeSStolerances(s.mem, rtol, rtol); /* Wb and rad/s; the fluxes are about one, as one tolerance suits */
    CVodeSetMaxNumSteps(s.mem, 10000000);
    if (lmm == CV_BDF) {
        s.A = SUNDenseMatrix(N, N, s.ctx); s.L = SUNLinSol_Dense(s.y, s.A, s.ctx);
        CVodeSetLinearSolver(s.mem, s.L, s.A); CVodeSetJacFn(s.mem, jac);
    } else { s.nls = SUNNonlinSol_FixedPoint(s.y, 0, s.ctx); CVodeSetNonlinearSolver(s.mem, s.nls); }
    return s;
}
static void drop(solver *s) {
    CVodeFree(&s->mem); if (s->L) SUNLinSolFree(s->L); if (s->A) SUNMatDestroy(s->A); if (s->nls) SUNNonlinSolFree(s->nls);
    N_VDestroy(s->y); SUNContext_Free(&s->ctx);
}
static void cvode_run(solver *s, int noting) {
    realtype t = 0;
    N_VConst(0, s->y); rising = 1; CVodeReInit(s->mem, 0, s->y);
    for (int piece = 0; piece < 2; piece++) {
        double end = piece ? END_S : RAMP_S;
        rising = !piece;
        if (piece) CVodeReInit(s->mem, RAMP_S, s->y);
        CVodeSetStopTime(s->mem, end);
        if (!noting) CVode(s->mem, end, s->y, &t, CV_NORMAL);
        else do { CVode(s->mem, end, s->y, &t, CV_ONE_STEP); note(t, NV_DATA_S(s->y)); } while (t < end);
    }
}
static void dp_run(double rtol, int noting) {
    double x[N] = {0}, k[7][N], y[N], t = 0, h = 1e-4;
    for (int piece = 0; piece < 2; piece++) {
        double end = piece ? END_S : RAMP_S; rising = !piece;
        rates(t, x, k[0]);
        if (piece) h = 1e-3;
        while (t < end) {
            int last = t + h >= end - 1e-13; double hh = last ? end - t : h;
#define ST(i, c, e) for (int j = 0; j < N; j++) y[j] = x[j] + hh * (e); rates(t + (c) * hh, y, k[i]);
            ST(1, 0.2, k[0][j] / 5)
            ST(2, 0.3, k[0][j] * 3 / 40 + k[1][j] * 9 / 40)
            ST(3, 0.8, k[0][j] * (44. / 45) - k[1][j] * (56. / 15) + k[2][j] * (32. / 9))
            ST(4, 8. / 9, k[0][j] * (19372. / 6561) - k[1][j] * (25360. / 2187) + k[2][j] * (64448. / 6561) - k[3][j] * (212. / 729))
            ST(5, 1, k[0][j] * (9017. / 3168) - k[1][j] * (355. / 33) + k[2][j] * (46732. / 5247) + k[3][j] * (49. / 176) - k[4][j] * (5103. / 18656))
            ST(6, 1, k[0][j] * (35. / 384) + k[2][j] * (500. / 1113) + k[3][j] * (125. / 192) - k[4][j] * (2187. / 6784) + k[5][j] * (11. / 84))
            double sum = 0;
            for (int j = 0; j < N; j++) {
                double e = hh * (k[0][j] * (71. / 57600) - k[2][j] * (71. / 16695) + k[3][j] * (71. / 1920) - k[4][j] * (17253. / 339200) + k[5][j] * (22. / 525) - k[6][j] / 40);
                double sc = rtol + rtol * fmax(fabs(x[j]), fabs(y[j])); sum += e * e / (sc * sc);
            }
            double err = sqrt(sum / N);
            if (err <= 1) { t = last ? end : t + hh; memcpy(x, y, sizeof x); memcpy(k[0], k[6], sizeof x); if (noting) note(t, x); }
            double g = 0.9 * pow(fmax(err, 1e-10), -0.2); g = g < 0.2 ? 0.2 : g > 5 ? 5 : g;
            if (!last || err > 1) h = hh * g;
        }
    }
    volatile double keep = x[4]; (void)keep;
}
static void rk4_run(double h, int noting) {
    double x[N] = {0}, a[N], b[N], c[N], d[N], y[N];
    int n1 = (int)ceil(RAMP_S / h - 1e-9), n2 = (int)ceil((END_S - RAMP_S) / h - 1e-9), i = 0;
    for (int piece = 0; piece < 2; piece++) {
        rising = !piece; int n = piece ? n2 : n1; double t0 = piece ? RAMP_S : 0, hh = piece ? (END_S - RAMP_S) / n2 : RAMP_S / n1;
        for (i = 0; i < n; i++) {
            double t = t0 + i * hh;
            rates(t, x, a);
            for (int j = 0; j < N; j++) y[j] = x[j] + 0.5 * hh * a[j];
            rates(t + 0.5 * hh, y, b);
            for (int j = 0; j < N; j++) y[j] = x[j] + 0.5 * hh * b[j];
            rates(t + 0.5 * hh, y, c);
            for (int j = 0; j < N; j++) y[j] = x[j] + hh * c[j];
            rates(t + hh, y, d);
            for (int j = 0; j < N; j++) x[j] += hh / 6 * (a[j] + 2 * (b[j] + c[j]) + d[j]);
            if (noting) note(t + hh, x);
        }
    }
    volatile double keep = x[4]; (void)keep;
}

static void errors(double *speed, double *amps) {
    solver s = make(CV_BDF, 1e-12); realtype t = 0; int piece = 0;
    N_VConst(0, s.y); rising = 1; CVodeReInit(s.mem, 0, s.y); CVodeSetStopTime(s.mem, RAMP_S);
    *speed = *amps = 0;
    for (int i = 0; i < count; i++) {
        double at = points[3 * i];
        if (!piece && at > RAMP_S) {
            if (t < RAMP_S) CVode(s.mem, RAMP_S, s.y, &t, CV_NORMAL);
            piece = 1; rising = 0; CVodeReInit(s.mem, RAMP_S, s.y); CVodeSetStopTime(s.mem, END_S);
        }
        if (at > t) CVode(s.mem, at > END_S ? END_S : at, s.y, &t, CV_NORMAL);
        double es = fabs(points[3 * i + 1] - NV_Ith_S(s.y, 4)), ea = fabs(points[3 * i + 2] - current(NV_DATA_S(s.y)));
        if (!(es <= *speed)) *speed = es;
        if (!(ea <= *amps)) *amps = ea;
    }
    drop(&s);
}
static double now(void) { struct timespec t; clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &t); return t.tv_sec * 1e6 + t.tv_nsec * 1e-3; }
static int up(const void *a, const void *b) { double x = *(const double *)a, y = *(const double *)b; return x < y ? -1 : x > y; }

int main(int argc, char **argv) {
    figures();
    double es, ea;
    if (argc > 1 && !strcmp(argv[1], "check")) {
        double t, w, i, x[N] = {0};
        while (scanf("%lf %lf %lf", &t, &w, &i) == 3) { note(t, x); points[3 * count - 2] = w; points[3 * count - 1] = i; }
        errors(&es, &ea); printf("%.3g %.3g\n", es, ea); return 0;
    }
    /* Every setting of a scan that keeps the errors is timed; the quickest of each method is printed. */
    static const char *names[] = {"cvode bdf", "cvode adams", "dp", "rk4"};
    for (int method = 0; method < 4; method++) {
        double best = 1e300, best_set = 0, bs = 0, ba = 0;
        for (int step = 0; step < 33; step++) {
            double set = method == 3 ? 0.012 * pow(0.9, step) : 1e-2 * pow(10, -step / 4.0);
            solver s; memset(&s, 0, sizeof s); if (method < 2) s = make(method ? CV_ADAMS : CV_BDF, set);
            count = 0;
            if (method < 2) cvode_run(&s, 1); else if (method == 2) dp_run(set, 1); else rk4_run(set, 1);
            errors(&es, &ea);
            if (es <= 0.01 && ea <= 0.1) {
                double times[15];
                for (int r = 0; r < 15; r++) {
                    int n = method < 2 ? 3 : 50; double t0 = now();
                    for (int i = 0; i < n; i++) { if (method < 2) cvode_run(&s, 0); else if (method == 2) dp_run(set, 0); else rk4_run(set, 0); }
                    times[r] = (now() - t0) / n;
                }
                qsort(times, 15, sizeof *times, up);
                if (times[7] < best) { best = times[7]; best_set = set; bs = es; ba = ea; }
            }
            if (method < 2) drop(&s);
        }
        printf("%s %.3g %.3f %.3g %.3g\n", names[method], best_set, best, bs, ba);
    }
    return 0;
}
