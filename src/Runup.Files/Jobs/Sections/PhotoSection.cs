using Runup.Commissioning.Survey;
using Runup.Files.Jobs.Keys;
using Runup.Files.Jobs.Photos;

namespace Runup.Files.Jobs.Sections;

/// <summary>Keys of a photo of the set.</summary>
internal sealed class PhotoSection(KeyList keys) : Section<SetPhoto>(keys)
{
    private readonly Key<PhotoName> file = keys.Add(new PhotoKey());
    private readonly Key<Datum<string>> note = keys.Text("note", "the panel with its door open", "what it shows");

    protected override SetPhoto Build(Values v) => new(v.Needed(file).File, v.Get(note)?.Value);
}
