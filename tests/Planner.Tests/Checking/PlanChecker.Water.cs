using Watersown.Land;
using Watersown.Schedule;

namespace Watersown.Planner.Checking;

internal sealed partial class PlanChecker
{
    private void CheckWater()
    {
        foreach (var fill in Of(PlanTaskKind.Fill)) CheckFill(fill);
        var moments = plan.Tasks.Where(t => t.Kind == PlanTaskKind.Fill).SelectMany(t => new[] { t.Start, t.End })
            .Concat(plan.Orders.Select(o => o.From)).Append(state.Now)
            .Concat(state.Farm.Sources.SelectMany(s => s.Curtailments).SelectMany(c => new[] { c.From, c.Until ?? c.From }).Where(t => t < state.Now.AddDays(90)))
            .Where(t => t >= state.Now).Distinct().Order();
        foreach (var at in moments) CheckFlowAt(at);
    }

    /// <summary>Floods the field minute by minute at the planned flow: wet ground drinks, the rest of the flow covers dry ground.</summary>
    private void CheckFill(PlanTask fill)
    {
        var field = state.Farm.Field(fill.Field);
        if (field.Sources.All(s => state.Farm.Source(s) is null)) return;
        var soil = state.Farm.SoilOf(field) ?? FieldWater.UsualSoil;
        double all = field.Net.Acres, covered = all * Wet(field, state.Season(fill.Field));
        var lossPerDay = (state.Evaporation.InchesPerDay + soil.Seepage.InchesPerDay) / 12;
        var flowPerDay = fill.Flow!.Value.CubicFeetPerSecond * 86400 / 43560;
        var minutes = (fill.End - Later(fill.Start, state.Now)).TotalMinutes;
        for (var m = 0; m < minutes && covered < all; m++) covered += (flowPerDay - (lossPerDay * covered)) / soil.Fill.Feet / 1440;
        if (covered < all * 0.999) Fault($"{fill.Field} is only {covered:0.0} of {all:0.0} ac wet when the plan calls it full");
        if (field.InletLimit is { } inlet && fill.Flow!.Value > inlet + FlowRate.FromCubicFeetPerSecond(0.01)) Fault($"{fill.Field} takes more than its inlet can pass");
    }

    private static double Wet(Field field, FieldSeason season) => season.Stage switch
    {
        FieldStage.Full or FieldStage.Sown => 1,
        FieldStage.Flooding when season.ChecksWet is { } wet && !field.Basins.IsEmpty => field.Basins.OrderBy(b => b.Number).Take(wet).Sum(b => b.Area.Acres) / field.Basins.Sum(b => b.Area.Acres),
        FieldStage.Flooding => 0.5,
        _ => 0,
    };

    private void CheckFlowAt(DateTimeOffset at)
    {
        var wants = new List<(Field Field, double Cfs)>();
        foreach (var field in state.Farm.Fields.Where(f => f.Sources.Any(s => state.Farm.Source(s) is not null)))
        {
            if (Demand(field, at) is var cfs and > 0) wants.Add((field, cfs));
        }

        var gives = state.Farm.Sources.ToDictionary(s => s.Code, s => Gives(s, at), StringComparer.Ordinal);
        // What is wet already may outrun its sources whatever is planned; the plan must not add to that.
        var there = state.Farm.Fields.Where(f => wants.Any(w => w.Field == f)).Select(f => (Field: f, Cfs: Hold(f) * Wet(f, state.Season(f.Code)))).Where(w => w.Cfs > 0).ToList();
        var served = MostFlow(wants, gives) + there.Sum(w => w.Cfs) - MostFlow(there, gives);
        var wanted = wants.Sum(w => w.Cfs);
        // Holds are rounded to hundredths of a cfs in the plan: allow one for each field.
        if (served < wanted - (0.01 * (wants.Count + 1))) Fault($"water at {at:ddd d HH:mm}: {wanted:0.00} cfs wanted, {served:0.00} can be given");
    }

    private double Demand(Field field, DateTimeOffset at)
    {
        var season = state.Season(field.Code);
        var hold = Hold(field);
        if (season.Stage is FieldStage.Sown or FieldStage.Full) return hold;
        if (plan.Task(field.Code, PlanTaskKind.Fill) is not { } fill || at < fill.Start) return hold * Wet(field, season);
        return at < fill.End ? fill.Flow!.Value.CubicFeetPerSecond : hold;
    }

    private double Hold(Field field)
    {
        var soil = state.Farm.SoilOf(field) ?? FieldWater.UsualSoil;
        return field.Net.Acres * (state.Evaporation.InchesPerDay + soil.Seepage.InchesPerDay) / 12 * 43560 / 86400;
    }

    private double Gives(WaterSource source, DateTimeOffset at)
    {
        if (source.Down) return 0;
        if (source.Needs is { } need && FullAcres(need, at) < need.Full.Acres) return 0;
        var order = plan.Orders.FirstOrDefault(o => o.Source == source.Code && o.From <= at && at < o.Until);
        var most = Left(source, at);
        return Math.Min(most, order?.Flow.CubicFeetPerSecond ?? most);
    }

    /// <summary>The most a source can give: its cap, less while it is curtailed; of turns what they bring in the mean.</summary>
    private static double Left(WaterSource source, DateTimeOffset at)
    {
        var most = Math.Min(source.Cap.CubicFeetPerSecond, source.Turns?.Flow?.CubicFeetPerSecond ?? double.MaxValue);
        foreach (var told in source.Curtailments.Where(c => c.From <= at && !(c.Until <= at)))
            most = Math.Min(most, told.Flow?.CubicFeetPerSecond ?? (source.Cap.CubicFeetPerSecond * told.Share!.Value.Share));
        return source.Turns is { } turns ? most * (turns.On / turns.Every) : most;
    }

    private double FullAcres(TailwaterNeed need, DateTimeOffset at) => need.Fields
        .Where(c => state.Season(c).Stage is FieldStage.Sown or FieldStage.Full || (plan.Task(c, PlanTaskKind.Fill) is { } fill && fill.End <= at))
        .Sum(c => state.Farm.Field(c).Net.Acres);

    /// <summary>Most water that reaches the fields: pushes along any path that still has room, sources under a shared cap going through it.</summary>
    private double MostFlow(List<(Field Field, double Cfs)> wants, Dictionary<string, double> gives)
    {
        var caps = state.Farm.SharedCaps;
        var names = new List<string> { "in" };
        names.AddRange(wants.Select(w => "f" + w.Field.Code));
        names.AddRange(gives.Keys.Select(s => "s" + s));
        names.AddRange(caps.Select(c => "c" + c.Name));
        names.Add("out");
        var room = new double[names.Count, names.Count];
        int At(string name) => names.IndexOf(name);
        foreach (var (field, cfs) in wants)
        {
            room[0, At("f" + field.Code)] = cfs;
            foreach (var source in field.Sources.Where(gives.ContainsKey)) room[At("f" + field.Code), At("s" + source)] = cfs;
        }

        foreach (var (source, cfs) in gives)
        {
            var cap = caps.FirstOrDefault(c => c.Sources.Contains(source));
            room[At("s" + source), cap is null ? names.Count - 1 : At("c" + cap.Name)] = cfs;
        }

        foreach (var cap in caps) room[At("c" + cap.Name), names.Count - 1] = cap.Cap.CubicFeetPerSecond;
        double flow = 0;
        while (Path(room, names.Count) is { } path)
        {
            var push = path.Zip(path.Skip(1), (a, b) => room[a, b]).Min();
            foreach (var (a, b) in path.Zip(path.Skip(1))) (room[a, b], room[b, a]) = (room[a, b] - push, room[b, a] + push);
            flow += push;
        }

        return flow;
    }

    private static List<int>? Path(double[,] room, int count)
    {
        var from = Enumerable.Repeat(-1, count).ToArray();
        var queue = new Queue<int>([0]);
        from[0] = 0;
        while (queue.TryDequeue(out var a))
        {
            for (var b = 0; b < count; b++)
            {
                if (from[b] >= 0 || room[a, b] < 1e-9) continue;
                from[b] = a;
                queue.Enqueue(b);
            }
        }

        if (from[^1] < 0) return null;
        var path = new List<int> { count - 1 };
        while (path[^1] != 0) path.Add(from[path[^1]]);
        path.Reverse();
        return path;
    }

    private void CheckOrders()
    {
        foreach (var source in state.Farm.Sources.Where(s => s.Notice > TimeSpan.Zero && !s.Down))
        {
            var orders = plan.Orders.Where(o => o.Source == source.Code).OrderBy(o => o.From).ToList();
            foreach (var order in orders.Where(o => o.From > state.Now))
            {
                var most = source.Curtailments.SelectMany(c => new[] { c.From, c.Until ?? c.From }).Where(t => t > order.From && t < order.Until).Append(order.From).Max(t => Left(source, t));
                if (order.Flow.CubicFeetPerSecond > most + 0.01) Fault($"{source.Code}: {order.Flow.CubicFeetPerSecond:0.0} cfs ordered from {order.From:ddd d HH:mm}, and no more than {most:0.0} is left of it");
            }

            if (orders.Count == 0) continue;
            if (source.Running is { } running && Math.Abs(orders[0].Flow.CubicFeetPerSecond - running.CubicFeetPerSecond) > 0.01 && orders[0].From < state.Now + source.Notice) Fault($"{source.Code} changes at once");
            foreach (var order in orders.Skip(1))
            {
                if (order.From < state.Now + source.Notice) Fault($"{source.Code} changes at {order.From:ddd HH:mm}, inside its notice");
                if (!source.ChangeHours.IsEmpty && !source.ChangeHours.Contains(TimeOnly.FromTimeSpan(order.From.TimeOfDay))) Fault($"{source.Code} changes at {order.From:HH:mm}");
            }
        }

        foreach (var cap in state.Farm.SharedCaps)
        {
            foreach (var at in plan.Orders.Select(o => o.From).Distinct().Order())
            {
                var together = cap.Sources.Sum(s => plan.Orders.FirstOrDefault(o => o.Source == s && o.From <= at && at < o.Until)?.Flow.CubicFeetPerSecond ?? 0);
                if (together > cap.Cap.CubicFeetPerSecond + 0.01) Fault($"{cap.Name}: {together:0.0} cfs ordered at {at:ddd HH:mm}, cap {cap.Cap.CubicFeetPerSecond:0.0}");
            }
        }
    }
}
