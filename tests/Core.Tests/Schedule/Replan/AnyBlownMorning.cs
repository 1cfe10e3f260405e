using CsCheck;
using Watersown.Flight;
using Watersown.Land;
using Watersown.Seed;

namespace Watersown.Schedule.Replan;

/// <summary>Blown-out mornings of farms with two to four fields in water, drawn at random.</summary>
internal static class AnyBlownMorning
{
    private static readonly DateTimeOffset Now = PlannedMorning.Now;

    private static readonly Gen<(int Acres, int Variety, int Wet, int Full)> Field = Gen.Select(Gen.Int[20, 170], Gen.Int[0, 2], Gen.Int[2, 13], Gen.Int[-40, 60]);

    private static readonly Gen<(int Dry, int Variety, int Soak, int Drained)> Batch = Gen.Select(Gen.Int[30, 260], Gen.Int[1, 2], Gen.Int[-80, 12], Gen.Int[0, 3]);

    public static Gen<SeasonState> States { get; } =
        from fields in Field.Array[2, 4]
        from batches in Batch.Array[0, 3]
        from slots in Gen.Select(Gen.Int[5, 9], Gen.Int[0, 5]).Array[5]
        from house in Gen.Select(Gen.Int[0, 6], Gen.Int[0, 3], Gen.Int[0, 90], Gen.Int[1, 2])
        select State(fields, batches, slots, house);

    private static SeasonState State((int Acres, int Variety, int Wet, int Full)[] fields, (int Dry, int Variety, int Soak, int Drained)[] batches, (int From, int Hours)[] slots, (int Trailers, int Hand, int Late, int Planes) house)
    {
        var known = PlannedMorning.State();
        return known with
        {
            Now = Now.AddMinutes(house.Late * 2),
            Farm = known.Farm with { Fields = [.. fields.Select((f, i) => new Field { Code = "F" + i, Name = "Field " + i, Net = Area.FromAcres(f.Acres), PassLength = Length.FromFeet(2640), Ferry = Length.FromMiles(1.5) })] },
            Fields = [.. fields.Select((f, i) => new FieldSeason("F" + i, SeedRate.FromPoundsPerAcre(150), FieldStage.Full) { Variety = Variety(f.Variety), FirstWater = Now.AddDays(-f.Wet), FullSince = Now.AddHours(f.Full) })],
            Batches = [.. batches.Select((b, i) => new SoakBatch("B" + i, "lot", Variety(b.Variety)!, DrySeed.FromPounds(b.Dry * 100), Now.AddHours(b.Soak)) { Drained = b.Drained == 0 && b.Soak < -24 ? Now.AddHours(b.Soak + 24) : null })],
            Lots = house.Hand == 0 ? [new SeedLot("lot", "V1") { InHand = DrySeed.FromPounds(20000) }] : [],
            Slots = [.. slots.Select((s, i) => new FlyingSlot(new DateOnly(2026, 5, 8).AddDays(i), new TimeOnly(s.From, 0), new TimeOnly(s.From + s.Hours, 0)))],
            Wind = [],
            SoakPlace = known.SoakPlace! with { Trailers = house.Trailers == 0 ? null : house.Trailers },
            Aeroplanes = house.Planes == 1 ? known.Aeroplanes : [.. known.Aeroplanes, new Aeroplane("Blue") { WorkingLoad = SoakedSeed.FromPounds(4000) }],
        };
    }

    private static string? Variety(int number) => number == 0 ? null : "V" + number;
}
