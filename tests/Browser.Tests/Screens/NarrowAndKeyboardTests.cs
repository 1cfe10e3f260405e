namespace Watersown.Journeys;

/// <summary>Every screen is whole on a narrow phone and at 200 %, and can be worked without a finger or a mouse.</summary>
public sealed class NarrowAndKeyboardTests(Chromium chromium, Marrowfen marrowfen)
{
    // In Spanish, whose words are the longer ones.
    [Fact]
    public async Task No_screen_is_wider_than_a_narrow_phone_or_a_doubled_page()
    {
        await using var device = await Device.VisitedAsync(chromium, marrowfen.Quiet, Holding.Telephone with { Spanish = true });
        var found = new List<string>();
        foreach (var screen in Screens.OfTheDesk)
        {
            await device.GoAsync(screen);
            found.AddRange((await Usable.OverflowAsync(device.Page)).Select(f => screen + ": " + f));
        }

        Usable.Nothing(found);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task Everything_that_can_be_pressed_is_reached_with_the_tabulator_and_seen_when_it_is(bool phone)
    {
        await using var device = await Device.VisitedAsync(chromium, marrowfen.Quiet, new Holding(phone));
        var found = new List<string>();
        foreach (var screen in Screens.OfTheDesk)
        {
            await device.GoAsync(screen);
            found.AddRange((await Usable.KeyboardAsync(device.Page)).Select(f => screen + ": " + f));
        }

        Usable.Nothing(found);
    }
}
