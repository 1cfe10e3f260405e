using System.Buffers;
using System.Text;
using System.Text.Json;
using Watersown.Land;
using Watersown.Wording;

namespace Watersown.Pocket.Keeping;

/// <summary>Which paper the desk is written on.</summary>
public enum PaperTheme
{
    /// <summary>Day from dawn to dusk at the strip, else night.</summary>
    BySun,
    Day,
    Night,
}

/// <summary>What a person chose on this device.</summary>
public sealed record DeskSettings
{
    public PaperTheme Theme { get; init; }

    /// <summary>Nothing chosen means the farm's.</summary>
    public Language? Language { get; init; }

    /// <summary>Nothing chosen means the farm's.</summary>
    public UnitSystem? Units { get; init; }

    /// <summary>A short tone when a mark is taken.</summary>
    public bool Sound { get; init; } = true;

    /// <summary>Whose marks these are, where the host does not say.</summary>
    public string? Name { get; init; }

    public string Write()
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer))
        {
            json.WriteStartObject();
            json.WriteString("theme", Theme switch { PaperTheme.Day => "day", PaperTheme.Night => "night", _ => "sun" });
            if (Language is { } language) json.WriteString("language", language == Wording.Language.Spanish ? "es" : "en");
            if (Units is { } units) json.WriteString("units", units == UnitSystem.Metric ? "metric" : "us");
            json.WriteBoolean("sound", Sound);
            if (Name is { } name) json.WriteString("name", name);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(buffer.WrittenSpan);
    }

    /// <summary>What was kept; what cannot be read is as if never chosen.</summary>
    public static DeskSettings Read(string? text)
    {
        if (text is null) return new DeskSettings();
        try
        {
            using var document = JsonDocument.Parse(text);
            string? Said(string name) => document.RootElement.TryGetProperty(name, out var value) && value.ValueKind == JsonValueKind.String ? value.GetString() : null;
            return new DeskSettings
            {
                Theme = Said("theme") switch { "day" => PaperTheme.Day, "night" => PaperTheme.Night, _ => PaperTheme.BySun },
                Language = Said("language") switch { "es" => Wording.Language.Spanish, "en" => Wording.Language.English, _ => null },
                Units = Said("units") switch { "metric" => UnitSystem.Metric, "us" => UnitSystem.UsCustomary, _ => null },
                Sound = !document.RootElement.TryGetProperty("sound", out var sound) || sound.ValueKind != JsonValueKind.False,
                Name = Said("name"),
            };
        }
        catch (JsonException)
        {
            return new DeskSettings();
        }
    }
}
