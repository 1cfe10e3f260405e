using System.Xml;
using Watersown.Flight.Flown;

namespace Watersown.Documents.Tracks;

/// <summary>
/// GPX 1.1 (and 1.0): places of tracks, and of routes where somebody saved a track as one. Gate, speed and course are read from
/// extensions by their names; speed there is in meters per second.
/// </summary>
internal sealed class GpxTrack(Action<Fix> take, string file) : XmlTrack(take, file)
{
    private Fix fix;
    private bool within;
    private bool begins = true;

    protected override void Starts(XmlReader reader)
    {
        switch (reader.LocalName)
        {
            case "trkseg" or "rte" or "trk":
                begins = true;
                break;
            case "trkpt" or "rtept":
                fix = new Fix(Figure(reader.GetAttribute("lat")), Figure(reader.GetAttribute("lon"))) { Begins = begins };
                within = true;
                break;
            default:
                break;
        }
    }

    protected override void Ends(string element, string said)
    {
        if (!within) return;
        if (element is "trkpt" or "rtept")
        {
            within = false;
            if (double.IsNaN(fix.Latitude) || double.IsNaN(fix.Longitude)) Drops.Add(DropReason.Unreadable, Given + 1);
            else
            {
                begins = false;
                Give(fix);
            }

            return;
        }

        fix = element switch
        {
            "time" when Parent is "trkpt" or "rtept" => fix with { Seconds = TrackTime.Moment(said) },
            "ele" => fix with { Height = Figure(said) },
            "speed" => fix with { Speed = Figure(said) },
            "course" => fix with { Course = Figure(said) },
            _ when fix.Gate == GateSign.NotTold && Parent is not ("trkpt" or "rtept") && TrackWords.Of(element)?.Column == TrackColumn.Gate => fix with { Gate = TrackWords.Gate(said) },
            _ => fix,
        };
    }
}
