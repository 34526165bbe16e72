using Runup.Quantities;
using Runup.Settings;

namespace Runup.Profiles.Tests.Command;

public sealed class CommandCodecTests
{
    private static DriveCommand Run(double hertz, Rotation rotation = Rotation.Forward) => new(ControlWord.EnableOperation, ElectricalFrequency.FromHertz(hertz), rotation);

    [Fact]
    public void A_reverse_bit_reverses_and_the_reference_has_no_sign()
    {
        var profile = Makes.Plain;
        CommandCodec.WordRaw(profile.Command!, Run(25, Rotation.Reverse)).ShouldBe(0x080F);
        CommandCodec.ReferenceRaw(profile, profile.Command!, Run(25, Rotation.Reverse), Makes.Defaults(profile)).ShouldBe(2500);
    }

    [Fact]
    public void In_velocity_mode_the_ramp_bits_are_set_and_the_sign_reverses()
    {
        var profile = Makes.Indexed;
        CommandCodec.WordRaw(profile.Command!, Run(25)).ShouldBe(0x007F);
        CommandCodec.ReferenceRaw(profile, profile.Command!, Run(25, Rotation.Reverse), Makes.Defaults(profile)).ShouldBe(-750);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void What_is_asked_is_what_the_drive_takes(bool plain)
    {
        var profile = plain ? Makes.Plain : Makes.Indexed;
        var asked = Run(37.5, Rotation.Reverse);
        var values = Makes.Defaults(profile);
        var taken = CommandCodec.Read(profile, profile.Command!, CommandCodec.WordRaw(profile.Command!, asked), CommandCodec.ReferenceRaw(profile, profile.Command!, asked, values)!.Value, values)!.Value;
        taken.Frequency.Hertz.ShouldBe(37.5, 1e-9);
        taken.Rotation.ShouldBe(Rotation.Reverse);
        CommandCodec.FollowsReference(profile.Command!, taken.Word).ShouldBeTrue();
    }

    // 12.49 Hz of four poles are 374.7 rpm.
    [Theory]
    [InlineData(Rotation.Forward, 374)]
    [InlineData(Rotation.Reverse, -374)]
    public void No_motor_is_asked_for_more_than_was_permitted(Rotation rotation, long raw) =>
        CommandCodec.ReferenceRaw(Makes.Indexed, Makes.Indexed.Command!, Run(12.49, rotation), Makes.Defaults(Makes.Indexed)).ShouldBe(raw);

    [Fact]
    public void A_reference_that_comes_out_even_keeps_every_count()
    {
        // Every whole rpm, as its frequency and back: the noise of binary fractions must not take one away.
        for (var rpm = 1; rpm <= 6000; rpm++)
        {
            CommandCodec.ReferenceRaw(Makes.Indexed, Makes.Indexed.Command!, Run(rpm / 30.0), Makes.Defaults(Makes.Indexed)).ShouldBe(rpm);
        }
    }

    [Fact]
    public void A_reference_beyond_the_register_is_not_made() =>
        CommandCodec.ReferenceRaw(Makes.Plain, Makes.Plain.Command!, Run(700), Makes.Defaults(Makes.Plain)).ShouldBeNull();

    [Fact]
    public void A_reading_in_per_mille_of_rated_current_is_a_current()
    {
        var profile = Makes.Indexed;
        var values = Makes.Defaults(profile);
        var raw = ReadingCodec.Encode(profile, values, new DriveReadings { OutputCurrent = LineCurrent.FromAmperes(7.2) }).ShouldHaveSingleItem();
        raw.Raw.ShouldBe(500);
        ReadingCodec.Decode(profile, values, p => p.Number is "6078h" ? 500 : null).OutputCurrent!.Value.Amperes.ShouldBe(7.2, 1e-9);
    }

    [Fact]
    public void A_negative_speed_survives_sixteen_bits()
    {
        var profile = Makes.Plain;
        var speed = profile.Find("1008")!;
        var raw = ReadingCodec.Encode(profile, Makes.Defaults(profile), new DriveReadings { Speed = ShaftSpeed.FromRpm(-1460) }).ShouldHaveSingleItem().Raw;
        RegisterImage.Raw(speed, RegisterImage.Words(speed, raw)).ShouldBe(-1460);
    }

    [Fact]
    public void An_unknown_trip_code_is_not_made_into_a_cause()
    {
        var codes = new TripCodes([new(1, TripCause.Overcurrent), new(2, TripCause.Overvoltage)]);
        codes.CauseOf(2).ShouldBe(TripCause.Overvoltage);
        codes.CauseOf(0).ShouldBe(TripCause.None);
        codes.CauseOf(77).ShouldBeNull();
    }
}
