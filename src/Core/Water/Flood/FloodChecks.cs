namespace Watersown.Water.Flood;

/// <summary>What a network must be before it can run: faults here are the program's, not the user's.</summary>
internal static class FloodChecks
{
    public static void Require(FloodNetwork network)
    {
        foreach (var check in network.Checks)
        {
            if (check.Area.SquareMeters <= 0 || check.Front.Meters <= 0 || check.TakeUp.Meters < 0) throw new ArgumentException($"{check.Name} has no ground or no front.", nameof(network));
        }

        foreach (var box in network.Boxes)
        {
            Inside(network, box.From, box.Name);
            if (box.To is { } to) Inside(network, to, box.Name);
            if (box.Ditch is { } ditch && (ditch < 0 || ditch >= network.Ditches.Length)) throw new ArgumentException($"{box.Name} drains into no ditch.", nameof(network));
            if (box.Width.Meters <= 0) throw new ArgumentException($"{box.Name} has no width.", nameof(network));
        }

        for (var d = 0; d < network.Ditches.Length; d++)
        {
            if (network.Ditches[d].To is { } to) Inside(network, to, network.Ditches[d].Name);
            // In order, so that a ditch knows all that comes before it gives.
            if (network.Ditches[d].Next is { } next && (next <= d || next >= network.Ditches.Length)) throw new ArgumentException($"{network.Ditches[d].Name} gives to a ditch before it.", nameof(network));
        }

        foreach (var inlet in network.Inlets) Inside(network, inlet.To, inlet.Source);
        foreach (var levee in network.Levees)
        {
            Inside(network, levee.From, "levee");
            if (levee.To is { } to) Inside(network, to, "levee");
        }

        if (network.Moves.Any(m => m.Box < 0 || m.Box >= network.Boxes.Length)) throw new ArgumentException("Boards move in no box.", nameof(network));
    }

    private static void Inside(FloodNetwork network, int check, string of)
    {
        if (check < 0 || check >= network.Checks.Length) throw new ArgumentException($"{of} joins a check that is not there.", nameof(network));
    }
}
