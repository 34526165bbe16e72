% Case (a) with Octave's ode45: the equations of ramp.c. Prints "rtol us speed_error current_error" of the loosest tolerance that keeps the errors.
1;
function p = figures()
  p.w1 = 2 * pi * 60; p.rs = 0.087; p.rr = 0.228; p.pp = 2; p.j = 1.662;
  p.pl = p.w1 / 0.302; p.share = 1 / (p.w1 / 13.08 + 2 * p.pl);
  p.load2 = 198 / (1705 * pi / 30) ^ 2;
  top = 460 * sqrt (2 / 3); p.v0 = 0.02 * top; p.v1 = (top - p.v0) / p.w1;
end
function d = rates(t, x, p, rising)
  if rising, w = p.w1 / 2 * t; else, w = p.w1; end
  qm = p.share * p.pl * (x(1) + x(3)); dm = p.share * p.pl * (x(2) + x(4));
  iqs = (x(1) - qm) * p.pl; ids = (x(2) - dm) * p.pl; iqr = (x(3) - qm) * p.pl; idr = (x(4) - dm) * p.pl;
  slip = w - p.pp * x(5);
  d = [p.v0 + p.v1 * w - p.rs * iqs - w * x(2); w * x(1) - p.rs * ids; -p.rr * iqr - slip * x(4); slip * x(3) - p.rr * idr;
       (1.5 * p.pp * (x(3) * idr - x(4) * iqr) - p.load2 * x(5) ^ 2) / p.j];
end
function [w, i] = run(p, tolerance)
  o = odeset ("RelTol", tolerance, "AbsTol", tolerance);
  [~, a] = ode45 (@(t, x) rates (t, x, p, true), linspace (0, 2, 401), zeros (5, 1), o);
  [~, b] = ode45 (@(t, x) rates (t, x, p, false), linspace (2, 3, 201), a(end, :)', o);
  x = [a; b(2:end, :)];
  q = (x(:, 1) - p.share * p.pl * (x(:, 1) + x(:, 3))) * p.pl; d = (x(:, 2) - p.share * p.pl * (x(:, 2) + x(:, 4))) * p.pl;
  w = x(:, 5); i = sqrt (0.5 * (q .^ 2 + d .^ 2));
end
p = figures ();
[speed, current] = run (p, 1e-10);
for step = 0:20
  tolerance = 1e-2 * 10 ^ (-step / 4);
  [w, i] = run (p, tolerance);
  ew = max (abs (w - speed)); ei = max (abs (i - current));
  if ew <= 0.01 && ei <= 0.1
    times = zeros (1, 3);
    for k = 1:3, begun = cputime (); run (p, tolerance); times(k) = (cputime () - begun) * 1e6; end
    printf ("%.3g %.0f %.3g %.3g\n", tolerance, median (times), ew, ei);
    break
  end
end
