using ProjNet.CoordinateSystems;

namespace Watersown.Records.Files.Boundaries;

/// <summary>
/// The datum under a grid. Those that keep within about 2 m of WGS 84 are taken as WGS 84 itself: the shift moves a whole farm,
/// not one field against another, and changes no acres. Older ones lie up to 200 m off and need the seven numbers of a shift in
/// the file.
/// </summary>
/// <param name="System">Its latitude and longitude.</param>
/// <param name="Shifts">It has a shift of its own to WGS 84.</param>
/// <param name="Fault">Why it cannot be used.</param>
internal sealed record GridDatum(GeographicCoordinateSystem System, bool Shifts, string? Fault)
{
    private const double Degree = Math.PI / 180;

    // Names as letters and digits only, each also as the beginning of a longer one ("…2011", "…csrs98").
    private static readonly string[] asGood =
    [
        "wgs1984", "wgs84", "worldgeodeticsystem1984",
        "northamerican1983", "northamericandatum1983", "nad83", "nad1983", "northamericanofharn", "nationalspatialreferencesystem2011",
        "etrs89", "etrs1989", "europeanterrestrialreferencesystem", "europeanterrestrialreferencesystem1989",
        "gda94", "gda1994", "geocentricdatumofaustralia1994", "gda2020", "geocentricdatumofaustralia2020", "nzgd2000", "newzealandgeodeticdatum2000",
        "jgd2000", "jgd2011", "japanesegeodeticdatum", "sirgas2000", "sistemadereferenciageocentricoparalasamericas2000",
        "itrf", "internationalterrestrialreferenceframe", "china2000", "cgcs2000",
    ];

    public static GridDatum? From(WktNode geographic)
    {
        if (geographic.Child("DATUM") is not { } datum || datum.Child("SPHEROID") is not { Numbers: [var axis, var inverseFlattening, ..] } spheroid) return null;
        if (axis is not (> 6.3e6 and < 6.4e6) || inverseFlattening is not (0 or (> 250 and < 350))) return null;
        if (geographic.Child("UNIT") is not { Numbers: [var unit, ..] }) return null;

        var meridian = geographic.Child("PRIMEM")?.Numbers is [var east, ..] ? east : 0;
        var shift = datum.Child("TOWGS84")?.Numbers is { Length: >= 3 } numbers ? numbers : [];
        var plain = Plain(datum.Name);
        var known = asGood.Any(name => plain.StartsWith(name, StringComparison.Ordinal));
        var shifts = !known && !shift.IsEmpty;
        var fault = (unit, meridian, known || shifts) switch
        {
            _ when Math.Abs(unit - Degree) > 1e-9 => "its angles are not in degrees",
            (_, not 0, _) => "its longitudes do not start at Greenwich",
            (_, _, false) => "its datum '" + datum.Name + "' lies up to 200 m from WGS 84",
            _ => null,
        };
        return new GridDatum(Build(datum, spheroid.Name, axis, inverseFlattening, shifts ? shift : []), shifts, fault);
    }

    private static GeographicCoordinateSystem Build(WktNode datum, string spheroid, double axis, double inverseFlattening, ImmutableArray<double> shift)
    {
        var factory = new CoordinateSystemFactory();
        var ellipsoid = factory.CreateFlattenedSphere(Named(spheroid), axis, inverseFlattening, LinearUnit.Metre);
        var info = shift.IsEmpty
            ? null
            : new Wgs84ConversionInfo(shift[0], shift[1], shift[2], At(shift, 3), At(shift, 4), At(shift, 5), At(shift, 6));
        var horizontal = factory.CreateHorizontalDatum(Named(datum.Name), DatumType.HD_Geocentric, ellipsoid, info);
        return factory.CreateGeographicCoordinateSystem(Named(datum.Name), AngularUnit.Degrees, horizontal, PrimeMeridian.Greenwich,
            new AxisInfo("lon", AxisOrientationEnum.East), new AxisInfo("lat", AxisOrientationEnum.North));
    }

    private static string Named(string name) => name.Length == 0 ? "unnamed" : name;

    private static double At(ImmutableArray<double> numbers, int index) => index < numbers.Length ? numbers[index] : 0;

    private static string Plain(string name)
    {
        var letters = string.Concat(name.ToLowerInvariant().Where(char.IsAsciiLetterOrDigit));
        return name.StartsWith("D_", StringComparison.OrdinalIgnoreCase) ? letters[1..] : letters;
    }
}
