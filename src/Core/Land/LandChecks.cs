using System.Globalization;
using Watersown.Wording;

namespace Watersown.Land;

/// <summary>Whether the facts of a farm can be true together. Single figures are judged by their <see cref="Limit"/>.</summary>
public static class LandChecks
{

    /// <summary>Everything found, in the order of the farm. Figures of zero stand for what could not be read and are passed over.</summary>
    public static ImmutableArray<Problem> Check(Farm farm, DateTimeOffset now)
    {
        var problems = ImmutableArray.CreateBuilder<Problem>();
        if (farm.Fields.IsEmpty) problems.Add(LandProblems.NoFields.At("fields"));
        if (farm.SeasonYear > now.Year + 2)
            problems.Add(LandProblems.YearAhead.At("season_year", ("value", farm.SeasonYear.ToString(CultureInfo.InvariantCulture)), ("limit", (now.Year + 2).ToString(CultureInfo.InvariantCulture))));
        if (farm.FinalPlanting is { } last && (last < new DateOnly(last.Year, 5, 15) || last > new DateOnly(last.Year, 6, 15)))
            problems.Add(LandProblems.FinalPlantingUnusual.At("final_planting", ("value", Day(last))));
        Unique(farm.Fields.Select(f => f.Name), "fields", "name", LandProblems.NameTwice, problems);
        Unique(farm.Fields.Select(f => f.Code), "fields", "code", LandProblems.CodeTwice, problems);
        Unique(farm.Soils.Select(s => s.Code), "soils", "code", LandProblems.CodeTwice, problems);
        Unique(farm.Sources.Select(s => s.Code), "sources", "code", LandProblems.CodeTwice, problems);
        Unique(farm.Strips.Select(s => s.Name), "strips", "name", LandProblems.NameTwice, problems);
        for (var i = 0; i < farm.Fields.Length; i++) CheckField(farm, i, problems);
        CheckSources(farm, problems);
        CheckHazards(farm, now, problems);
        return problems.ToImmutable();
    }

    /// <summary>Says that a code is none of the known ones.</summary>
    /// <param name="value">As typed; empty means it could not be read and is passed over.</param>
    /// <param name="known">Codes of the farm.</param>
    /// <param name="what">What they are: <c>the sources of this farm</c>.</param>
    /// <param name="where">Place of the problem.</param>
    public static Problem? Missing(string value, IReadOnlyCollection<string> known, string what, string where)
    {
        if (value.Length == 0 || known.Contains(value, StringComparer.Ordinal)) return null;
        var nearest = Nearest.Of(value, known);
        var listed = known.Count is > 0 and <= 12 ? " (" + string.Join(", ", known) + ")" : string.Empty;
        return LandProblems.NoSuch.At(where, ("value", value), ("known", what + listed), ("known:es", "los del rancho" + listed), ("nearest", nearest is null ? string.Empty : " " + nearest + "?"));
    }

    private static void Unique(IEnumerable<string> names, string list, string key, ProblemKind kind, ImmutableArray<Problem>.Builder problems)
    {
        var first = new Dictionary<string, int>(StringComparer.OrdinalIgnoreCase);
        var index = -1;
        foreach (var name in names)
        {
            index++;
            if (name.Length == 0 || first.TryAdd(name, index)) continue;
            problems.Add(kind.At(Place.Of(list, index, string.Empty, key), ("value", name), ("other", Place.Of(list, first[name], string.Empty))));
        }
    }

    private static void CheckField(Farm farm, int index, ImmutableArray<Problem>.Builder problems)
    {
        var field = farm.Fields[index];
        CheckAcres(field, index, problems);
        CheckBasins(field, index, problems);
        CheckBoundary(field, index, problems);
        if (field.Soil is { } soil && Missing(soil, [.. farm.Soils.Select(s => s.Code)], "the soils of this farm", Place.Of("fields", index, field.Name, "soil")) is { } noSoil)
            problems.Add(noSoil);
        ImmutableArray<string> sources = [.. farm.Sources.Select(s => s.Code)];
        foreach (var source in field.Sources)
        {
            if (Missing(source, sources, "the sources of this farm", Place.Of("fields", index, field.Name, "sources")) is { } noSource) problems.Add(noSource);
        }
    }

    private static void CheckAcres(Field field, int index, ImmutableArray<Problem>.Builder problems)
    {
        if (field.Net <= Area.Zero) return;
        var where = Place.Of("fields", index, field.Name, "net_ac");
        if (field.Gross is { } gross && gross > Area.Zero)
        {
            var share = field.Net / gross;
            if (share > 1 + 1e-12)
                problems.Add(LandProblems.NetAboveGross.At(where, ("value", Acres(field.Net)), ("limit", Acres(gross))));
            else if (share is < 0.88 or > 0.99)
                problems.Add(LandProblems.NetShareUnusual.At(where, ("value", Acres(field.Net)), ("limit", Acres(gross)), ("share", Percent(share))));
        }

        if (field.Certified is { } certified && certified > Area.Zero && Math.Abs((certified / field.Net) - 1) > 0.08)
        {
            problems.Add(LandProblems.CertifiedDiffers.At(Place.Of("fields", index, field.Name, "certified_ac"),
                ("value", Acres(certified)), ("limit", Acres(field.Net)), ("share", Percent(Math.Abs((certified / field.Net) - 1)))));
        }
    }

    private static void CheckBoundary(Field field, int index, ImmutableArray<Problem>.Builder problems)
    {
        if (field.Boundary is not { } boundary) return;
        var measured = new MeasuredEdge(boundary, GeodesicArea.Of(boundary), field.Gross);
        if (Math.Abs(measured.Off ?? 0) > DrawnEdge.MostOff) problems.Add(DrawnEdge.Differs(measured, Place.Of("fields", index, field.Name, "boundary")));
    }

    private static void CheckBasins(Field field, int index, ImmutableArray<Problem>.Builder problems)
    {
        var where = Place.Of("fields", index, field.Name, "checks");
        if (!field.Basins.IsEmpty && field.Basins.All(b => b.Area > Area.Zero) && field.Net > Area.Zero)
        {
            var sum = field.Basins.Aggregate(Area.Zero, (total, basin) => total + basin.Area);
            if (sum / field.Net > 1.02 + 1e-12)
                problems.Add(LandProblems.ChecksAboveNet.At(where, ("value", Acres(sum)), ("limit", Acres(field.Net))));
            else if (sum / field.Net < 0.95 - 1e-12)
                problems.Add(LandProblems.ChecksBelowNet.At(where, ("value", Acres(sum)), ("limit", Acres(field.Net))));
        }

        var numbers = field.Basins.Select(b => b.Number).Order().ToList();
        if (!numbers.SequenceEqual(Enumerable.Range(1, numbers.Count)))
            problems.Add(LandProblems.CheckNumbers.At(where, ("value", string.Join(", ", numbers))));
        for (var i = 0; i < field.Boxes.Length; i++)
        {
            var box = field.Boxes[i];
            var path = "fields[" + index.ToString(CultureInfo.InvariantCulture) + "].boxes";
            foreach (var (key, check) in new[] { ("from_check", box.FromCheck), ("to_check", box.ToCheck) })
            {
                if (check is { } number && numbers.Count > 0 && !numbers.Contains(number))
                    problems.Add(LandProblems.NoSuchCheck.At(Place.Of(path, i, field.Name, key), ("value", number.ToString(CultureInfo.InvariantCulture)), ("limit", numbers.Count.ToString(CultureInfo.InvariantCulture))));
            }
        }
    }

    private static void CheckSources(Farm farm, ImmutableArray<Problem>.Builder problems)
    {
        ImmutableArray<string> fields = [.. farm.Fields.Select(f => f.Code)];
        ImmutableArray<string> sources = [.. farm.Sources.Select(s => s.Code)];
        for (var i = 0; i < farm.Sources.Length; i++)
        {
            var source = farm.Sources[i];
            if (source.Running is { } running && source.Cap > FlowRate.Zero && running / source.Cap > 1 + 1e-12)
                problems.Add(LandProblems.RunningAboveCap.At(Place.Of("sources", i, source.Code, "running_cfs"), ("value", Flow(running)), ("limit", Flow(source.Cap))));
            CheckTimes(source, i, problems);
            foreach (var field in source.Needs?.Fields ?? [])
            {
                if (Missing(field, fields, "the fields of this farm", Place.Of("sources", i, source.Code, "needs_full.fields")) is { } missing) problems.Add(missing);
            }
        }

        for (var i = 0; i < farm.SharedCaps.Length; i++)
        {
            var shared = farm.SharedCaps[i];
            foreach (var source in shared.Sources)
            {
                if (Missing(source, sources, "the sources of this farm", Place.Of("shared_caps", i, shared.Name, "sources")) is { } missing) problems.Add(missing);
            }

            var together = shared.Sources.Select(farm.Source).Aggregate(FlowRate.Zero, (sum, s) => sum + (s?.Running ?? FlowRate.Zero));
            if (shared.Cap > FlowRate.Zero && together / shared.Cap > 1 + 1e-12)
                problems.Add(LandProblems.RunningAboveCap.At(Place.Of("shared_caps", i, shared.Name, "cap_cfs"), ("value", Flow(together)), ("limit", Flow(shared.Cap))));
        }
    }

    private static void CheckTimes(WaterSource source, int index, ImmutableArray<Problem>.Builder problems)
    {
        if (source.Turns is { } turns)
        {
            if (turns.On >= turns.Every) problems.Add(LandProblems.TurnTooLong.At(Place.Of("sources", index, source.Code, "turns.on_h"), ("value", Hours(turns.On)), ("limit", Hours(turns.Every))));
            if (turns.Flow is { } flow && source.Cap > FlowRate.Zero && flow / source.Cap > 1 + 1e-12)
                problems.Add(LandProblems.RunningAboveCap.At(Place.Of("sources", index, source.Code, "turns.turn_cfs"), ("value", Flow(flow)), ("limit", Flow(source.Cap))));
        }

        for (var k = 0; k < source.Curtailments.Length; k++)
        {
            var at = k.ToString(CultureInfo.InvariantCulture);
            problems.AddRange(Check(source.Curtailments[k], source, key => Place.Of("sources", index, source.Code, "curtailed[" + at + "]." + key)));
        }
    }

    /// <summary>Whether a curtailment can be true of a source.</summary>
    /// <param name="curtailment">The curtailment.</param>
    /// <param name="source">The source; none where nobody knows it.</param>
    /// <param name="where">Place of a key of it.</param>
    public static IEnumerable<Problem> Check(Curtailment curtailment, WaterSource? source, Func<string, string> where)
    {
        if (curtailment.Until is { } until && until <= curtailment.From)
            yield return LandProblems.CurtailedBackward.At(where("until"), ("value", When.Moment(until)), ("limit", When.Moment(curtailment.From)));
        if (source is { } known && known.Cap > FlowRate.Zero && (curtailment.Flow ?? known.Cap * (curtailment.Share ?? Fraction.Zero).Share) >= known.Cap)
            yield return LandProblems.NothingCurtailed.At(where(curtailment.Flow is null ? LandLimits.LeftShare.Key : LandLimits.Left.Key), ("value", Flow(curtailment.Flow ?? known.Cap)), ("limit", Flow(known.Cap)));
    }

    private static string Hours(TimeSpan span) => Say.Figure(span.TotalHours) + " h";

    private static void CheckHazards(Farm farm, DateTimeOffset now, ImmutableArray<Problem>.Builder problems)
    {
        ImmutableArray<string> fields = [.. farm.Fields.Select(f => f.Code)];
        var today = new DateOnly(now.Year, now.Month, now.Day);
        for (var i = 0; i < farm.Hazards.Length; i++)
        {
            var hazard = farm.Hazards[i];
            if (HazardLooks.Of(farm, hazard, today) == HazardLook.Old)
                problems.Add(LandProblems.HazardOld.At(Place.Of("hazards", i, hazard.Name, "confirmed"), ("value", Day(hazard.Confirmed!.Value)), ("limit", Held(farm.HazardsKeep).English), ("limit:es", Held(farm.HazardsKeep).Spanish)));
            foreach (var field in hazard.Near)
            {
                if (Missing(field, fields, "the fields of this farm", Place.Of("hazards", i, hazard.Name, "near")) is { } missing) problems.Add(missing);
            }
        }
    }

    private static (string English, string Spanish) Held(HazardKeep keep) =>
        keep == HazardKeep.Season ? ("before this season", "antes de esta temporada") : ("more than 12 months ago", "hace más de 12 meses");

    private static string Acres(Area area) => Say.Number(area.Acres, 2).TrimEnd('0').TrimEnd('.') + " ac";

    private static string Flow(FlowRate flow) => Say.Number(flow.CubicFeetPerSecond, 2).TrimEnd('0').TrimEnd('.') + " cfs";

    private static string Percent(double share) => Say.Number(share * 100, 1) + " %";

    private static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
