namespace Watersown.Documents.Tracks;

/// <summary>Sorts of track file.</summary>
public enum TrackKind
{
    Gpx,
    Nmea,
    GeoJson,
    Kml,
    Csv,
}

/// <summary>How a track is read.</summary>
public sealed record TrackOptions
{
    /// <summary>Which column is what, by heading or by number from 1; for NMEA the gate as <c>PGATE.1</c>, sentence and field.</summary>
    public ImmutableDictionary<TrackColumn, string> Columns { get; init; } = ImmutableDictionary<TrackColumn, string>.Empty;

    /// <summary>Told how many bytes were read, now and then.</summary>
    public Action<long>? Progress { get; init; }
}

/// <summary>What a file told besides its places.</summary>
/// <param name="Kind">Its sort.</param>
/// <param name="Dropped">Lines and places that could not be read.</param>
/// <param name="Columns">For a table: what each column was taken for.</param>
public sealed record TrackTold(TrackKind Kind, ImmutableArray<Watersown.Flight.Flown.Dropped> Dropped, ImmutableArray<(TrackColumn Column, string Heading)> Columns);

/// <summary>What a column, an attribute or an extension of a track can tell.</summary>
public enum TrackColumn
{
    Latitude,
    Longitude,
    Time,
    Date,
    Height,
    Speed,
    Course,
    Gate,
}
