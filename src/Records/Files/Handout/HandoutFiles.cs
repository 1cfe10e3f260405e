using System.IO.Compression;
using System.Text;
using Watersown.Documents.Handout;
using Watersown.Flight.Handout;
using Watersown.Wording;

namespace Watersown.Records.Files.Handout;

/// <summary>A handout in every open format, each in one file.</summary>
public static class HandoutFiles
{
    /// <summary>The files by name. The same handout gives the same bytes.</summary>
    public static ImmutableArray<(string Name, ReadOnlyMemory<byte> Bytes)> Of(FarmHandout handout, Language language)
    {
        var words = Words.In(language).Handout;
        var readme = Template.Fill(words.Title, ("farm", handout.Farm)) + "\n\n" + string.Concat(words.Cautions.Select(c => "- " + c + "\n")) + "\n" + words.Readme + "\n";
        return
        [
            ("handout.geojson", GeoJsonHandout.Write(handout, language)),
            ("handout.kml", KmlHandout.Write(handout, language)),
            ("handout.gpx", GpxHandout.Write(handout, language)),
            ("shapefiles.zip", Zip(handout, string.Empty, ShapefileHandout.Write(handout))),
            ("taskdata.zip", Zip(handout, "TASKDATA/", TaskDataHandout.Write(handout, language))),
            ("README.txt", Encoding.UTF8.GetBytes(readme)),
        ];
    }

    private static ReadOnlyMemory<byte> Zip(FarmHandout handout, string folder, ImmutableArray<(string Name, ReadOnlyMemory<byte> Bytes)> files)
    {
        using var stream = new MemoryStream();
        using (var archive = new ZipArchive(stream, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var (name, bytes) in files)
            {
                var entry = archive.CreateEntry(folder + name, CompressionLevel.Optimal);
                entry.LastWriteTime = handout.Made;
                using var part = entry.Open();
                part.Write(bytes.Span);
            }
        }

        return stream.ToArray();
    }
}
