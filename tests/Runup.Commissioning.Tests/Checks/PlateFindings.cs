using Runup.Commissioning.Checks;
using Runup.Commissioning.Survey;

namespace Runup.Commissioning.Tests.Checks;

/// <summary>What the plate checks say of a plate.</summary>
internal static class PlateFindings
{
    internal static IReadOnlyList<CheckResult> Of(MotorSurvey motor) => [.. CheckList.OfPlate.Select(check => check.Judge(PlateContext.For(motor)))];

    internal static IReadOnlyList<CheckResult> Of(PlateSurvey plate) => Of(Plates.Motor(plate));

    internal static CheckResult Of(PlateSurvey plate, string id) => Of(plate).Single(result => result.Id == id);

    internal static IReadOnlyList<string> Ids(PlateSurvey plate) => Ids(Of(plate));

    internal static IReadOnlyList<string> Ids(IEnumerable<CheckResult> results) =>
        [.. results.OfType<CheckResult.Violated>().Select(finding => finding.Id)];
}
