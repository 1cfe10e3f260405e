namespace Watersown.Season;

/// <summary>What the farm cuts and delivers with. What is not given stays as it was.</summary>
public sealed record HarvestMeansTold : MarkFact
{
    [PlainNumber("combines")]
    public int? Combines { get; init; }

    /// <summary>Land that one combine cuts in a day.</summary>
    public Area? EachDay { get; init; }

    /// <summary>Sets that the dryer takes in a day.</summary>
    [PlainNumber("sets of two trailers")]
    public int? Sets { get; init; }

    /// <summary>Green grain in one set.</summary>
    public Mass? SetWeight { get; init; }

    /// <summary>Grain expected, at the moisture it is paid at.</summary>
    public GrainYield? Expected { get; init; }

    /// <summary>Not cut above this moisture.</summary>
    public Fraction? CutFrom { get; init; }

    /// <summary>Below this moisture grain is at risk.</summary>
    public Fraction? CutTo { get; init; }
}

/// <summary>Room at a dryer that is other than usual on some days; a dryer's name makes it room beside the usual one.</summary>
/// <param name="From">First day.</param>
/// <param name="Until">Last day.</param>
/// <param name="Sets">Sets it takes in a day.</param>
public sealed record DryerRoomGiven(DateOnly From, DateOnly Until, [property: PlainNumber("sets of two trailers")] int Sets) : MarkFact
{
    /// <summary>Whose room; the farm's usual dryer where not given.</summary>
    public string? Dryer { get; init; }

    /// <summary>The only variety it takes.</summary>
    public string? Variety { get; init; }
}

/// <summary>Somebody measured the moisture of a field's grain.</summary>
/// <param name="Field">Field code.</param>
/// <param name="Moisture">Wet basis.</param>
public sealed record MoistureSampled(string Field, Fraction Moisture) : MarkFact
{
    public override string? AboutField => Field;
}

/// <summary>The crop of a field lies down, or stands again.</summary>
/// <param name="Field">Field code.</param>
/// <param name="Lies">It lies down.</param>
public sealed record CropLodged(string Field, bool Lies) : MarkFact
{
    public override string? AboutField => Field;
}

/// <summary>The boards came out for harvest.</summary>
/// <param name="Field">Field code.</param>
public sealed record BoardsOut(string Field) : MarkFact
{
    public override string? AboutField => Field;
}

/// <summary>Land of a field was cut.</summary>
/// <param name="Field">Field code.</param>
public sealed record FieldCut(string Field) : MarkFact
{
    /// <summary>How much; all that was left where not given.</summary>
    public Area? Land { get; init; }

    public override string? AboutField => Field;
}

/// <summary>A field's share of one truck.</summary>
/// <param name="Field">Field code.</param>
/// <param name="Share">Of the truck's grain.</param>
public sealed record TicketPart(string Field, Fraction Share);

/// <summary>A scale ticket of the dryer.</summary>
/// <param name="Number">As printed.</param>
/// <param name="Gross">Truck and grain.</param>
/// <param name="Tare">The truck.</param>
/// <param name="Moisture">Of the grain, wet basis.</param>
public sealed record GrainTicketed(string Number, Mass Gross, Mass Tare, Fraction Moisture) : MarkFact
{
    public string? Dryer { get; init; }

    public string? Variety { get; init; }

    /// <summary>Foreign matter, of the net weight.</summary>
    public Fraction Foreign { get; init; }

    public string? Truck { get; init; }

    /// <summary>Which fields it came from; together all of it.</summary>
    public FactList<TicketPart> Parts { get; init; } = [];

    /// <summary>Whole kernels, of the paddy, once the mill has told.</summary>
    public Fraction? Head { get; init; }

    /// <summary>All milled rice, of the paddy, once the mill has told.</summary>
    public Fraction? Total { get; init; }

    /// <summary>Grain over the scale.</summary>
    public Mass Net => Gross - Tare;

    /// <summary>Its one field; none where it came from several.</summary>
    public override string? AboutField => Parts.Count == 1 ? Parts[0].Field : null;
}

/// <summary>A landlord's share of a field's crop, by the lease.</summary>
/// <param name="Field">Field code.</param>
/// <param name="Landlord">The farm's word for the landlord.</param>
/// <param name="Share">Of the grain.</param>
public sealed record CropShareTold(string Field, string Landlord, Fraction Share) : MarkFact
{
    public override string? AboutField => Field;
}
