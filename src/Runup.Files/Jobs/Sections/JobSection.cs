using Runup.Commissioning.Survey;
using Runup.Files.Jobs.Keys;
using Runup.Files.Yaml;

namespace Runup.Files.Jobs.Sections;

/// <summary>The keys at the top of a job file.</summary>
internal sealed class JobSection(KeyList keys) : Section<Job>(keys)
{
    private readonly Key<FormatVersion> version = keys.Add(new VersionKey());
    private readonly Key<Datum<string>> tag = keys.Text("tag", "SWP-101", "equipment tag", Need.Yes);
    private readonly Key<Datum<string>> title = keys.Text("title", "Seawater intake pump 1", "what the set is, in words");
    private readonly Key<SupplySurvey> supply = keys.Part("supply", "supply at the drive", new SupplySection(new()), Need.Yes);
    private readonly Key<MotorSurvey> motor = keys.Part("motor", "the motor", new MotorSection(new()), Need.Yes);
    private readonly Key<DriveSurvey> drive = keys.Part("drive", "the drive", new DriveSection(new()), Need.Yes);
    private readonly Key<CableSurvey> cable = keys.Part("cable", "cable from drive to motor", new CableSection(new()));
    private readonly Key<MachineSurvey> machine = keys.Part("machine", "the driven machine", new MachineSection(new()), Need.Yes);
    private readonly Key<OperationSurvey> operation = keys.Part("operation", "how the set is to run", new OperationSection(new()), Need.Yes);
    private readonly Key<ControlSurvey> control = keys.Part("control", "where commands come from", new ControlSection(new()));
    private readonly Key<BusSurvey> bus = keys.Part("bus", "bus to the control system", new BusSection(new()), Need.No, ("none", BusSection.NoBus));
    private readonly Key<PlaceSurvey> place = keys.Part("place", "where the set stands", new PlaceSection(new()));
    private readonly Key<IReadOnlyList<SetPhoto>> photos = keys.List("photos", "of the set as a whole; a datum names its own", new PhotoSection(new()));

    /// <summary>The motor alone, with the tag if there is one; null with problems where anything that stands in the file is wrong.</summary>
    internal (MotorSurvey Motor, string? Tag)? ReadMotor(YamlMap map, Desk desk)
    {
        var values = ReadKeys(map, desk);
        return !desk.Problems.Any && values.Get(motor) is { } read ? (read, values.Get(tag)?.Value) : null;
    }

    protected override Job Build(Values v) => new()
    {
        Tag = v.Needed(tag).Value,
        Title = v.Get(title)?.Value,
        Supply = v.Needed(supply),
        Motor = v.Needed(motor),
        Drive = v.Needed(drive),
        Cable = v.Needed(cable),
        Machine = v.Needed(machine),
        Operation = v.Needed(operation),
        Control = v.Needed(control),
        Bus = v.Needed(bus),
        Place = v.Needed(place),
        Photos = v.Get(photos) ?? [],
    };
}
