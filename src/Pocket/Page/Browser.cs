using System.Globalization;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;
using Watersown.Land;

namespace Watersown.Pocket.Page;

/// <summary>What pages ask of the browser besides keeping: how the paper looks, a buzz, a copy, a picture.</summary>
/// <param name="script">The desk's one script.</param>
public sealed class Browser(IJSObjectReference script)
{
    /// <summary>Puts the paper and the language on the page, and keeps them for the next opening.</summary>
    public ValueTask DressAsync(string theme, string language, string kept) => script.InvokeVoidAsync("dress", theme, language, kept);

    /// <summary>Keeps the Morning page as it stands, to be shown at once next time. Gives its size.</summary>
    public ValueTask<int> KeepMorningAsync(string words) => script.InvokeAsync<int>("keepMorning", words);

    /// <summary>A buzz, and a short tone where wanted.</summary>
    public ValueTask FeelAsync(Sounding sounding) => script.InvokeVoidAsync("feel", sounding == Sounding.Tone);

    /// <summary>Long buzzes, and a low tone where wanted: a stop.</summary>
    public ValueTask HaltAsync(Sounding sounding) => script.InvokeVoidAsync("halt", sounding == Sounding.Tone);

    /// <summary>Puts text on the clipboard; false where the browser does not let it.</summary>
    public ValueTask<bool> CopyAsync(string text) => script.InvokeAsync<bool>("copy", text);

    /// <summary>Makes the picture of a file field small and keeps it under a name. Gives its size; nothing where none was taken.</summary>
    public ValueTask<int> KeepPhotoAsync(ElementReference field, string id) => script.InvokeAsync<int>("keepPhoto", field, id);

    /// <summary>An address under which the page can show a kept picture.</summary>
    public ValueTask<string?> PhotoAddressAsync(string id) => script.InvokeAsync<string?>("photoAddress", id);

    /// <summary>Sends the file of a field to the host as it is; the host's answer, nothing where there was none.</summary>
    public ValueTask<string?> SendFileAsync(ElementReference field, string path, string? token, string language) => script.InvokeAsync<string?>("sendFile", field, path, token, language);

    /// <summary>Where this device is, and how far that may be off; nothing where it is not told. Asked once, when somebody taps for it.</summary>
    public async ValueTask<(GeoPoint At, Length Good)?> HereAsync()
    {
        var told = (await script.InvokeAsync<string?>("here"))?.Split(' ').Select(n => double.Parse(n, CultureInfo.InvariantCulture)).ToArray();
        return told is [var latitude, var longitude, var off] ? (new GeoPoint(latitude, longitude), Length.FromMeters(off)) : null;
    }

    /// <summary>Opens the newer version that waits.</summary>
    public ValueTask UseNewerAsync() => script.InvokeVoidAsync("useNewer");

    /// <summary>Whether the screen is too narrow for a board of hours.</summary>
    public ValueTask<bool> NarrowAsync() => script.InvokeAsync<bool>("narrow");

    /// <summary>Lets steps inside a frame be moved by hand.</summary>
    public ValueTask SteerAsync(ElementReference frame) => script.InvokeVoidAsync("steer", frame);

    public ValueTask FocusAsync(string selector) => script.InvokeVoidAsync("focus", selector);
}

/// <summary>Whether a kept mark is heard.</summary>
public enum Sounding
{
    Silent,
    Tone,
}
