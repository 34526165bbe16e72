/* One step of Dormand and Prince's pair of orders 5 and 4 for n equations without time: from x to y, stages in k, the error over the tolerance as the answer.
   With have_first the first stage stands in k[0] already; after it k[6] is the next step's first.                                                      */
#ifndef DORMAND_H
#define DORMAND_H
#define DP_MOST 12
#define DP_INLINE static inline __attribute__((always_inline))
typedef double dp_states[DP_MOST];
#define ST(i, e) for (int j = 0; j < n; j++) y[j] = x[j] + h * (e); rates(y, k[i]);
DP_INLINE double dp_try(int n, void (*rates)(const double *, double *), const double *scale, const double *x, double *y, dp_states *k, double h, double rtol, int have_first) {
    if (!have_first) rates(x, k[0]);
    ST(1, k[0][j] / 5)
    ST(2, k[0][j] * 3 / 40 + k[1][j] * 9 / 40)
    ST(3, k[0][j] * (44. / 45) - k[1][j] * (56. / 15) + k[2][j] * (32. / 9))
    ST(4, k[0][j] * (19372. / 6561) - k[1][j] * (25360. / 2187) + k[2][j] * (64448. / 6561) - k[3][j] * (212. / 729))
    ST(5, k[0][j] * (9017. / 3168) - k[1][j] * (355. / 33) + k[2][j] * (46732. / 5247) + k[3][j] * (49. / 176) - k[4][j] * (5103. / 18656))
    ST(6, k[0][j] * (35. / 384) + k[2][j] * (500. / 1113) + k[3][j] * (125. / 192) - k[4][j] * (2187. / 6784) + k[5][j] * (11. / 84))
    double sum = 0;
    for (int j = 0; j < n; j++) {
        double e = h * (k[0][j] * (71. / 57600) - k[2][j] * (71. / 16695) + k[3][j] * (71. / 1920) - k[4][j] * (17253. / 339200) + k[5][j] * (22. / 525) - k[6][j] / 40);
        double sc = rtol * (scale[j] + fmax(fabs(x[j]), fabs(y[j]))); sum += e * e / (sc * sc);
    }
    return sqrt(sum / n);
}
#undef ST
static inline double dp_growth(double error) { return clamp(0.9 * pow(fmax(error, 1e-10), -0.2), 0.2, 5); }
#endif
