using Google.OrTools.Sat;

namespace Watersown.Planner.Modeling;

/// <summary>The unknowns of one field.</summary>
internal sealed class FieldVars
{
    public required BoolVar Sown { get; init; }

    /// <summary>Ground and water are planned.</summary>
    public required ILiteral Flooded { get; init; }

    public List<IntVar> Works { get; } = [];

    public List<(IntVar Day, IntVar Within)> WorkEnds { get; } = [];

    /// <summary>First water; a constant where the field is wet already.</summary>
    public required LinearExpr FillStart { get; init; }

    public required LinearExpr FillEnd { get; init; }

    public IntVar? FillStartVar { get; init; }

    public IntVar? FillSteps { get; init; }

    public IntVar? FillEndVar { get; init; }

    public IntVar? Flow { get; init; }

    public required IntVar Sow { get; init; }

    public List<BoolVar> OnPlane { get; } = [];

    public required IntVar SowEnd { get; init; }

    /// <summary>Day of soak of a batch of its own.</summary>
    public required IntVar SoakDay { get; init; }

    public required BoolVar OwnBatch { get; init; }

    /// <summary>By existing batch: used here; none where it does not fit.</summary>
    public List<BoolVar?> Batches { get; } = [];

    /// <summary>Sown on that day; none where it cannot be.</summary>
    public Dictionary<int, BoolVar> SownOn { get; } = [];

    /// <summary>Full by the end of that day.</summary>
    public Dictionary<int, BoolVar> FullBy { get; } = [];

    public required IntVar AgeCost { get; init; }

    public IntVar? TrailerSteps { get; set; }

    public IntVar? TrailerUntil { get; set; }
}
