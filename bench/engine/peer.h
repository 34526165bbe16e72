/* What the peers of cases (b) and (c) share: SUNDIALS CVODE set up, errors against a reference, and times. */
#ifndef PEER_H
#define PEER_H
#include <cvode/cvode.h>
#include <nvector/nvector_serial.h>
#include <sundials/sundials_nonlinearsolver.h>
#include <sunlinsol/sunlinsol_dense.h>
#include <sunmatrix/sunmatrix_dense.h>
#include <sunnonlinsol/sunnonlinsol_fixedpoint.h>
#include <time.h>
#include "drive.h"

/* A system of equations, and how CVODE is to take it: BDF with Newton and the Jacobian, or Adams with fixed-point iteration; order 0 is the method's highest. */
typedef struct { int states, roots, method, order; CVRhsFn f; CVLsJacFn jacobian; CVRootFn root; const double *scale; double rtol; } peer;
typedef struct { void *mem; N_Vector y; SUNContext ctx; SUNMatrix A; SUNLinearSolver L; SUNNonlinearSolver nls; } solver;
static solver make(const peer *p) {
    solver s; memset(&s, 0, sizeof s);
    SUNContext_Create(NULL, &s.ctx);
    s.y = N_VNew_Serial(p->states, s.ctx); N_VConst(0, s.y);
    s.mem = CVodeCreate(p->method, s.ctx);
    CVodeInit(s.mem, p->f, 0, s.y);
    N_Vector atol = N_VNew_Serial(p->states, s.ctx);
    for (int i = 0; i < p->states; i++) NV_Ith_S(atol, i) = p->scale[i] * p->rtol;
    CVodeSVtolerances(s.mem, p->rtol, atol); N_VDestroy(atol);
    CVodeSetMaxNumSteps(s.mem, 10000000);
    if (p->order) CVodeSetMaxOrd(s.mem, p->order);
    if (p->method == CV_BDF) {
        s.A = SUNDenseMatrix(p->states, p->states, s.ctx); s.L = SUNLinSol_Dense(s.y, s.A, s.ctx);
        CVodeSetLinearSolver(s.mem, s.L, s.A); CVodeSetJacFn(s.mem, p->jacobian);
    } else { s.nls = SUNNonlinSol_FixedPoint(s.y, 0, s.ctx); CVodeSetNonlinearSolver(s.mem, s.nls); }
    if (p->roots) { CVodeRootInit(s.mem, p->roots, p->root); CVodeSetNoInactiveRootWarn(s.mem); }
    return s;
}
static void drop(solver *s) {
    CVodeFree(&s->mem); if (s->L) SUNLinSolFree(s->L); if (s->A) SUNMatDestroy(s->A); if (s->nls) SUNNonlinSolFree(s->nls);
    N_VDestroy(s->y); SUNContext_Free(&s->ctx);
}

/* Speed and current at the end of every millisecond, of the run of now and of the reference. */
static double *now_w, *now_i, *ref_w, *ref_i;
static void make_notes(void) { now_w = calloc(4 * (ticks + 1), sizeof *now_w); now_i = now_w + ticks + 1; ref_w = now_i + ticks + 1; ref_i = ref_w + ticks + 1; }
static void note(int tick, const double *x) { now_w[tick] = x[4]; now_i[tick] = current(x); }
static void take_as_reference(void) { memcpy(ref_w, now_w, 2 * (ticks + 1) * sizeof *now_w); }
static void errors(double *ew, double *ei) {
    *ew = *ei = 0;
    for (int k = 1; k <= ticks; k++) {
        double w = fabs(now_w[k] - ref_w[k]), i = fabs(now_i[k] - ref_i[k]);
        if (!(w <= *ew)) *ew = w;
        if (!(i <= *ei)) *ei = i;
    }
}
/* Notes from "t speed current" lines of a file. */
static int notes_from(const char *file) {
    FILE *in = fopen(file, "r"); double t, w, i;
    if (!in) { perror(file); return 0; }
    memset(now_w, 0, 2 * (ticks + 1) * sizeof *now_w);
    while (fscanf(in, "%lf %lf %lf", &t, &w, &i) == 3) { int k = (int)floor(t / TS + 0.5); if (k >= 1 && k <= ticks) { now_w[k] = w; now_i[k] = i; } }
    fclose(in); return 1;
}

static double clock_us(void) { struct timespec t; clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &t); return t.tv_sec * 1e6 + t.tv_nsec * 1e-3; }
static int up(const void *a, const void *b) { double x = *(const double *)a, y = *(const double *)b; return x < y ? -1 : x > y; }
#define MEDIAN_OF(n, run) ({ double times[n]; for (int r = 0; r < n; r++) { double t0 = clock_us(); run; times[r] = clock_us() - t0; } qsort(times, n, sizeof *times, up); times[n / 2]; })
#define MEDIAN_US(run) MEDIAN_OF(9, run)
/* The quickest setting of a method that keeps the errors. */
typedef struct { double us, setting, speed_error, current_error; } finest;
static const finest none = {1e300, 0, 0, 0};
static int within(double *ew, double *ei) { errors(ew, ei); return *ew <= 0.01 && *ei <= 0.1; }
static void print(const char *name, const finest *b) { if (b->us < 1e300) printf("%s %.3g %.1f %.3g %.3g\n", name, b->setting, b->us, b->speed_error, b->current_error); fflush(stdout); }
#endif
