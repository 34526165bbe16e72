/* Motors straight on a supply, without a drive: reference trajectories by SUNDIALS CVODE 6.4 (Debian 12, libsundials-dev), Adams at a
   relative tolerance of 1e-13, checked against BDF at 1e-12. Equations of Krause's induction machine, flux linkages as states, in the frame
   that turns with the supply; see docs/calculations/time-domain-engine.md. Writes line-start.csv, which tests hold the engine against:

     gcc -O2 line-start.c -o line-start -lsundials_cvode -lsundials_nvecserial -lsundials_sunmatrixdense -lsundials_sunlinsoldense -lm
     ./line-start > line-start.csv            the largest disagreement of the two methods goes to the error output              */
#include <complex.h>
#include <cvode/cvode.h>
#include <math.h>
#include <nvector/nvector_serial.h>
#include <stdio.h>
#include <string.h>
#include <sundials/sundials_nonlinearsolver.h>
#include <sunlinsol/sunlinsol_dense.h>
#include <sunmatrix/sunmatrix_dense.h>
#include <sunnonlinsol/sunnonlinsol_fixedpoint.h>

#define N 5
#define PI 3.14159265358979323846
typedef struct {
    const char *name;
    double lineV, hz, pairs, rs, xls, xm, xlr, rr, rc; /* rc 0: no core loss */
    double inertia, loadNm, loadRpm, startRpm;         /* load with the square of speed, against forward motion */
    double rampS, boost;                               /* rampS 0: full voltage and frequency at once */
    double endS, everyS;
} run;
static const run runs[] = {
    {"start", 100 * 1.7320508075688772, 50, 2, 0.03, 0.10178253, 2.89821747, 0.10178253, 0.04, 0, 0.58, 161.4, 1440.45, 0, 0, 0, 0.8, 0.01},
    {"core-loss", 400, 50, 2, 0.2379, 0.5067, 22.133, 0.77, 0.1792, 367, 0.24, 120, 1462.5, 0, 0, 0, 0.6, 0.01},
    {"plugging", 460, 60, 2, 0.641, 1.106, 26.3, 0.464, 0.332, 0, 0.554, 0, 1800, -1790, 0, 0, 2.0, 0.02},
    {"ramp", 460, 60, 2, 0.087, 0.302, 13.08, 0.302, 0.228, 0, 1.662, 198, 1705, 0, 2, 0.02, 3.0, 0.05},
};
static const run *r;
static double w1, top, load2;
static double field(double t) { return r->rampS > 0 && t < r->rampS ? w1 * t / r->rampS : w1; }
static int rates(realtype t, N_Vector yv, N_Vector dv, void *u) {
    (void)u;
    const double *x = NV_DATA_S(yv);
    double *d = NV_DATA_S(dv), w = field(t), v = r->rampS > 0 ? r->boost * top + (1 - r->boost) * top * w / w1 : top;
    double pls = w1 / r->xls, plr = w1 / r->xlr;
    /* complex vectors q − j·d; the core carries jω·λm/rc */
    double complex s = x[0] - I * x[1], q = x[2] - I * x[3];
    double complex m = (s * pls + q * plr) / (w1 / r->xm + pls + plr + (r->rc > 0 ? I * w / r->rc : 0));
    double complex is = (s - m) * pls, ir = (q - m) * plr;
    double complex ds = v - r->rs * is - I * w * s, dr = -r->rr * ir - I * (w - r->pairs * x[4]) * q;
    double torque = 1.5 * r->pairs * (cimag(q) * creal(ir) - creal(q) * cimag(ir));
    d[0] = creal(ds); d[1] = -cimag(ds); d[2] = creal(dr); d[3] = -cimag(dr);
    d[4] = (torque - load2 * x[4] * x[4]) / r->inertia;
    return 0;
}
static int solve(int method, double rtol, double *out) {
    SUNContext ctx;
    SUNContext_Create(NULL, &ctx);
    N_Vector y = N_VNew_Serial(N, ctx);
    N_VConst(0, y);
    NV_Ith_S(y, 4) = r->startRpm * PI / 30;
    void *mem = CVodeCreate(method, ctx);
    CVodeInit(mem, rates, 0, y);
    CVodeSStolerances(mem, rtol, rtol * 0.1);
    CVodeSetMaxNumSteps(mem, 100000000);
    SUNMatrix A = NULL; SUNLinearSolver L = NULL; SUNNonlinearSolver F = NULL;
    if (method == CV_BDF) { A = SUNDenseMatrix(N, N, ctx); L = SUNLinSol_Dense(y, A, ctx); CVodeSetLinearSolver(mem, L, A); }
    else { F = SUNNonlinSol_FixedPoint(y, 0, ctx); CVodeSetNonlinearSolver(mem, F); }
    int rows = (int)lround(r->endS / r->everyS);
    realtype t = 0;
    for (int i = 1; i <= rows; i++) {
        double to = i * r->everyS;
        if (r->rampS > 0 && fabs(to - r->rampS - r->everyS) < 1e-9) CVodeReInit(mem, r->rampS, y); /* the ramp's end is an event */
        CVodeSetStopTime(mem, to);
        if (CVode(mem, to, y, &t, CV_NORMAL) < 0) return -1;
        memcpy(out + i * N, NV_DATA_S(y), N * sizeof(double));
    }
    CVodeFree(&mem); if (L) SUNLinSolFree(L); if (A) SUNMatDestroy(A); if (F) SUNNonlinSolFree(F);
    N_VDestroy(y); SUNContext_Free(&ctx);
    return rows;
}
int main(void) {
    static double a[1000 * N], b[1000 * N];
    puts("run,time_s,flux_qs_Wb,flux_ds_Wb,flux_qr_Wb,flux_dr_Wb,speed_rad_per_s");
    for (unsigned n = 0; n < sizeof runs / sizeof *runs; n++) {
        r = &runs[n]; w1 = 2 * PI * r->hz; top = r->lineV * sqrt(2.0 / 3);
        double rated = r->loadRpm * PI / 30; load2 = r->loadNm / (rated * rated);
        int rows = solve(CV_ADAMS, 1e-13, a);
        if (rows < 0 || solve(CV_BDF, 1e-12, b) < 0) { fprintf(stderr, "%s: no solution\n", r->name); return 1; }
        double worst = 0;
        for (int j = 0; j < N; j++) {
            double largest = 0, apart = 0;
            for (int i = 1; i <= rows; i++) {
                largest = fmax(largest, fabs(a[i * N + j])); apart = fmax(apart, fabs(a[i * N + j] - b[i * N + j]));
            }
            worst = fmax(worst, apart / largest);
        }
        fprintf(stderr, "%s: methods apart by %.1e of a state's largest magnitude\n", r->name, worst);
        for (int i = 1; i <= rows; i++) {
            printf("%s,%.4g", r->name, i * r->everyS);
            for (int j = 0; j < N; j++) printf(",%.10g", a[i * N + j]);
            putchar('\n');
        }
    }
    return 0;
}
