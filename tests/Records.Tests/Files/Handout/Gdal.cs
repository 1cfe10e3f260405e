using System.Diagnostics;
using System.Text.Json;

namespace Watersown.Records.Files.Handout;

/// <summary>Reads geographic files with GDAL, which nobody here wrote (Debian's gdal-bin).</summary>
internal static class Gdal
{
    /// <summary>Features of one layer as GDAL understands them.</summary>
    public static JsonElement[] Features(string file, string? layer = null)
    {
        var start = new ProcessStartInfo("ogr2ogr") { RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false };
        foreach (var argument in (string[])["-f", "GeoJSON", "-lco", "COORDINATE_PRECISION=10", "/vsistdout/", file]) start.ArgumentList.Add(argument);
        if (layer is not null) start.ArgumentList.Add(layer);
        using var run = Process.Start(start) ?? throw new InvalidOperationException("ogr2ogr did not start.");
        var error = run.StandardError.ReadToEndAsync();
        using var answer = JsonDocument.Parse(run.StandardOutput.BaseStream);
        run.WaitForExit();
        if (run.ExitCode != 0) throw new InvalidOperationException(error.GetAwaiter().GetResult());
        return [.. answer.RootElement.GetProperty("features").EnumerateArray().Select(f => f.Clone())];
    }

    /// <summary>All coordinates of a geometry in order, longitude and latitude.</summary>
    public static IEnumerable<(double Longitude, double Latitude)> Places(JsonElement geometry)
    {
        return Of(geometry.GetProperty("coordinates"));

        static IEnumerable<(double Longitude, double Latitude)> Of(JsonElement coordinates) => coordinates[0].ValueKind == JsonValueKind.Number
            ? [(coordinates[0].GetDouble(), coordinates[1].GetDouble())]
            : coordinates.EnumerateArray().SelectMany(Of);
    }
}
