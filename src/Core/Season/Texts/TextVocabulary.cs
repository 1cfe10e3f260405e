using Watersown.Schedule;
using Watersown.Wording;

namespace Watersown.Season.Texts;

/// <summary>One word or phrase that crews write.</summary>
/// <param name="Words">The words, in small letters without marks.</param>
/// <param name="Key">What it means.</param>
/// <param name="Language">The language it belongs to; none where both write it so.</param>
/// <param name="Value">Which stage, reason, month or direction.</param>
internal sealed record TextPhrase(ImmutableArray<string> Words, TextKey Key, Language? Language, int Value);

/// <summary>The words that crews write, in both languages.</summary>
internal static class TextVocabulary
{
    /// <summary>Longer phrases first.</summary>
    public static ImmutableArray<TextPhrase> Phrases { get; } = [.. English().Concat(Spanish()).Concat(Both()).OrderByDescending(p => p.Words.Length)];

    private static readonly ImmutableArray<TextPhrase> single = [.. Phrases.Where(p => p.Words is [{ Length: >= 5 }])];

    public static TextPhrase? At(ReadOnlySpan<string> words)
    {
        foreach (var phrase in Phrases)
        {
            if (phrase.Words.Length <= words.Length && phrase.Words.AsSpan().SequenceEqual(words[..phrase.Words.Length])) return phrase;
        }

        return null;
    }

    /// <summary>The one word that is a slip of the thumb away; none where two are.</summary>
    public static TextPhrase? Near(string word)
    {
        if (word.Length < 4) return null;
        var near = single.Where(p => Nearest.Distance(word, p.Words[0]) <= 1).ToList();
        return near.Count > 0 && near.TrueForAll(p => p.Key == near[0].Key && p.Value == near[0].Value) ? near[0] : null;
    }

    private static IEnumerable<TextPhrase> English() => In(Language.English, [
        (TextKey.Wet, 0, "wet, water in"), (TextKey.Full, 0, "full"), (TextKey.Dry, 0, "dry"), (TextKey.Reflooded, 0, "reflooded, refilled, water back"),
        (TextKey.Check, 0, "check, ck, chk, cks, checks"), (TextKey.Box, 0, "box"), (TextKey.Boards, 0, "boards, board"), (TextKey.Leak, 0, "leaking, leaks, leak, leaky"),
        (TextKey.Levee, 0, "levee, levy"), (TextKey.Broken, 0, "out, broken, broke, washed out, stuck, dead"), (TextKey.Pump, 0, "pump, well"), (TextKey.Gate, 0, "gate, turnout"),
        (TextKey.On, 0, "on, up, running, started"), (TextKey.Off, 0, "off, down, stopped"), (TextKey.Curtailed, 0, "curtailed, cut, cut back, down to, held to"), (TextKey.Until, 0, "until, till"),
        (TextKey.Sown, 0, "sown, seeded, planted, flown"), (TextKey.Resown, 0, "resown, reseeded"), (TextKey.Load, 0, "load"), (TextKey.Loads, 0, "loads"), (TextKey.Gone, 0, "gone, away"),
        (TextKey.Loaded, 0, "loaded"), (TextKey.Batch, 0, "batch"), (TextKey.InSoak, 0, "in soak, soaking"), (TextKey.Drained, 0, "drained"), (TextKey.Dumped, 0, "dumped"),
        (TextKey.Trailer, 0, "trailer"), (TextKey.Left, 0, "left, leftover, left over"), (TextKey.Wind, 0, "wind"), (TextKey.Gust, 0, "gust, gusts, gusting"),
        (TextKey.NotFlying, 0, "not flying, no flying, no fly, stood down"), (TextKey.Told, 0, "told"), (TextKey.Heard, 0, "heard"), (TextKey.Agreed, 0, "agreed"), (TextKey.NotReached, 0, "not reached, no answer"),
        (TextKey.Shrimp, 0, "shrimp"), (TextKey.Leaf, 0, "leaf"), (TextKey.None, 0, "none"), (TextKey.Small, 0, "small"), (TextKey.Large, 0, "large, big"), (TextKey.Note, 0, "note"),
        (TextKey.Stage, (int)FieldStage.TooWet, "too wet"), (TextKey.Stage, (int)FieldStage.Unworked, "unworked, not worked"), (TextKey.Stage, (int)FieldStage.Chiselled, "chiseled, chiselled"), (TextKey.Stage, (int)FieldStage.Disced, "disced, disked"),
        (TextKey.Stage, (int)FieldStage.Planed, "planed, landplaned"), (TextKey.Stage, (int)FieldStage.AquaOn, "aqua on, aqua"), (TextKey.Stage, (int)FieldStage.Rolled, "rolled"), (TextKey.Stage, (int)FieldStage.Flooding, "flooding, filling"),
        (TextKey.Why, (int)StandDownReason.Rain, "rain"), (TextKey.Why, (int)StandDownReason.Fog, "fog"), (TextKey.Why, (int)StandDownReason.Aeroplane, "aeroplane, airplane, plane"), (TextKey.Why, (int)StandDownReason.Seed, "seed"), (TextKey.Why, (int)StandDownReason.Field, "field"), (TextKey.Why, (int)StandDownReason.Other, "another reason"),
        (TextKey.Month, 1, "jan"), (TextKey.Month, 2, "feb"), (TextKey.Month, 3, "mar"), (TextKey.Month, 4, "apr"), (TextKey.Month, 5, "may"), (TextKey.Month, 6, "jun"), (TextKey.Month, 7, "jul"), (TextKey.Month, 8, "aug"), (TextKey.Month, 9, "sep"), (TextKey.Month, 10, "oct"), (TextKey.Month, 11, "nov"), (TextKey.Month, 12, "dec"),
        (TextKey.Compass, 0, "north"), (TextKey.Compass, 90, "east"), (TextKey.Compass, 180, "south"), (TextKey.Compass, 270, "west"),
        (TextKey.Inch, 0, "in, inch, inches"), (TextKey.PoundDry, 0, "lb dry, lbs dry, pounds dry, dry lb, dry lbs"), (TextKey.PoundWet, 0, "lb wet, lbs wet, pounds wet, wet lb, wet lbs"), (TextKey.Pound, 0, "pounds"), (TextKey.Mile, 0, "mph"),
        (TextKey.Filler, 0, "the, is, at, and, has, to, now, gives, for, from, water, got it, with, today, until further notice"), .. Weekdays("mon, tue, wed, thu, fri, sat, sun")]);

    private static IEnumerable<TextPhrase> Spanish() => In(Language.Spanish, [
        (TextKey.Wet, 0, "mojado, mojada, con agua"), (TextKey.Full, 0, "lleno, llena"), (TextKey.Dry, 0, "seco, seca"), (TextKey.Reflooded, 0, "reinundado, reinundada"),
        (TextKey.Check, 0, "cuadro, cdro, melga, cuadros"), (TextKey.Box, 0, "caja"), (TextKey.Boards, 0, "tablas, tabla"), (TextKey.Leak, 0, "gotea, fuga, tira agua, se tira"),
        (TextKey.Levee, 0, "bordo"), (TextKey.Broken, 0, "roto, rota, descompuesta, descompuesto, reventado, atorada"), (TextKey.Pump, 0, "bomba, pozo"), (TextKey.Gate, 0, "compuerta"),
        (TextKey.On, 0, "prendida, prendido, arranco"), (TextKey.Off, 0, "apagada, apagado, parada, paro"), (TextKey.Curtailed, 0, "recortada, recortado, baja a, bajada a"), (TextKey.Until, 0, "hasta"),
        (TextKey.Sown, 0, "sembrado, sembrada, volado"), (TextKey.Resown, 0, "resembrado, resembrada"), (TextKey.Load, 0, "carga"), (TextKey.Loads, 0, "cargas"), (TextKey.Gone, 0, "salio, se fue"),
        (TextKey.Loaded, 0, "cargado, cargada"), (TextKey.Batch, 0, "remojo"), (TextKey.InSoak, 0, "en remojo"), (TextKey.Drained, 0, "escurrido, escurrida"), (TextKey.Dumped, 0, "tirado, tirada"),
        (TextKey.Trailer, 0, "remolque"), (TextKey.Left, 0, "sobran, sobraron, sobra"), (TextKey.Wind, 0, "viento"), (TextKey.Gust, 0, "rafaga, rafagas"),
        (TextKey.NotFlying, 0, "no vuela, no vuelo, no volamos, no se vuela"), (TextKey.Told, 0, "avisado, avisada"), (TextKey.Heard, 0, "oido, enterado, enterada"), (TextKey.Agreed, 0, "de acuerdo"), (TextKey.NotReached, 0, "no contesta, no contesto"),
        (TextKey.Shrimp, 0, "camaron, camarones"), (TextKey.Leaf, 0, "hoja"), (TextKey.None, 0, "nada, ninguno"), (TextKey.Small, 0, "chico"), (TextKey.Large, 0, "grande"), (TextKey.Note, 0, "nota"),
        (TextKey.Stage, (int)FieldStage.TooWet, "muy humedo, muy mojado"), (TextKey.Stage, (int)FieldStage.Unworked, "sin trabajar, sin labrar"), (TextKey.Stage, (int)FieldStage.Chiselled, "cincelado, con cincel"), (TextKey.Stage, (int)FieldStage.Disced, "rastreado"),
        (TextKey.Stage, (int)FieldStage.Planed, "nivelado"), (TextKey.Stage, (int)FieldStage.AquaOn, "amoniaco puesto, amoniaco, con amoniaco"), (TextKey.Stage, (int)FieldStage.Rolled, "rodillado"), (TextKey.Stage, (int)FieldStage.Flooding, "inundando, llenando, llenandose"),
        (TextKey.Why, (int)StandDownReason.Rain, "lluvia"), (TextKey.Why, (int)StandDownReason.Fog, "niebla"), (TextKey.Why, (int)StandDownReason.Aeroplane, "avioneta, avion"), (TextKey.Why, (int)StandDownReason.Seed, "semilla"), (TextKey.Why, (int)StandDownReason.Field, "campo"), (TextKey.Why, (int)StandDownReason.Other, "otra razon"),
        (TextKey.Month, 1, "ene"), (TextKey.Month, 4, "abr"), (TextKey.Month, 8, "ago"), (TextKey.Month, 12, "dic"),
        (TextKey.Compass, 0, "norte"), (TextKey.Compass, 90, "este"), (TextKey.Compass, 180, "sur"), (TextKey.Compass, 270, "oeste"),
        (TextKey.Inch, 0, "pulg, pulgada, pulgadas"), (TextKey.PoundDry, 0, "lb secas, libras secas, lb seca"), (TextKey.PoundWet, 0, "lb mojadas, libras mojadas, lb mojada"), (TextKey.Pound, 0, "libras"), (TextKey.Mile, 0, "mi/h, millas"),
        (TextKey.Filler, 0, "el, la, esta, en, y, ya, ahora, da, para, del, de, con, agua, anotado, hoy, se, desde, hasta nuevo aviso"), .. Weekdays("lun, mar, mie, jue, vie, sab, dom")]);

    private static IEnumerable<TextPhrase> Both() => In(null, [
        (TextKey.Inch, 0, "\""), (TextKey.Centimeter, 0, "cm"), (TextKey.CubicFeet, 0, "cfs"), (TextKey.Gallons, 0, "gpm"), (TextKey.Pound, 0, "lb, lbs"), (TextKey.Acre, 0, "ac, acre, acres"), (TextKey.Degree, 0, "°, deg"),
        (TextKey.Gust, 0, "g"), (TextKey.None, 0, "no"), (TextKey.Filler, 0, "ok, a")]);

    private static IEnumerable<(TextKey Key, int Value, string Said)> Weekdays(string fromMonday) =>
        fromMonday.Split(", ").Select((said, i) => (TextKey.Weekday, (i + 1) % 7, said));

    private static IEnumerable<TextPhrase> In(Language? language, IEnumerable<(TextKey Key, int Value, string Said)> entries) =>
        entries.SelectMany(e => e.Said.Split(", ").Select(said => new TextPhrase([.. said.Split(' ')], e.Key, language, e.Value)));
}
