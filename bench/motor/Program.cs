using System.Diagnostics;
using System.Globalization;
using Runup.Commissioning.Checks;
using Runup.Commissioning.Diagnosis;
using Runup.Engineering.Motors.Ensemble;
using Runup.Files.Jobs;

// Processor time of the ensemble of a job's motor and of all its steady-state predictions: first call, and the middle of many.
if (args.Length != 1 || JobFile.ReadMotor(args[0]) is not MotorReading.Read read)
{
    Console.Error.WriteLine("usage: Runup.Bench.Motor FILE (a job file, or one with only the motor part)");
    return 2;
}

var plate = MotorContext.For(read.Motor).Nameplate!;
using var process = Process.GetCurrentProcess();
double Milliseconds(Action work)
{
    process.Refresh();
    var before = process.TotalProcessorTime;
    work();
    process.Refresh();
    return (process.TotalProcessorTime - before).TotalMilliseconds;
}

void Predict()
{
    var known = KnownMotor.Of(read.Motor, plate)!;
    _ = MotorBands.Of(known.Now);
    _ = MotorOnDriveForecast.Of(known.Now);
    _ = NextReading.Best(known.Now, known.Readings.Taken);
}

var first = Milliseconds(Predict);
for (var round = 0; round < 40; round++)
{
    Predict();
}

// The clock of processor time is coarse, so that ten are measured at once.
var settled = Enumerable.Range(0, 9).Select(_ => Milliseconds(() =>
{
    for (var round = 0; round < 10; round++)
    {
        Predict();
    }
}) / 10).Order().ElementAt(4);
Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{{\"first_ms\": {first:0.0}, \"settled_ms\": {settled:0.0}, \"members\": {MotorEnsemble.DefaultSize}}}"));
return 0;
