using CsCheck;

namespace Watersown.Land;

public sealed class ShortCodesTests
{
    [Theory]
    [InlineData("Two Gates", "TG")]
    [InlineData("Dogleg", "DOG")]
    [InlineData("N4", "N4")]
    [InlineData("Widow's Eighty", "WE")]
    [InlineData("La Ciénega", "LC")]
    [InlineData("Ñandú", "NAN")]
    [InlineData("上の田", "F1")]
    [InlineData("", "F1")]
    [InlineData("One Two Three Four Five", "OTTF")]
    public void A_code_comes_from_the_name(string name, string code) => Assert.Equal(code, ShortCodes.For([name], [])[0]);

    [Fact]
    public void Names_that_look_alike_get_codes_that_do_not() =>
        Assert.Equal("GN GS SC SCOR SWI", string.Join(' ', ShortCodes.For(["Gander North", "Gander South", "Salt Corner", "Soft Corner", "Swift Corner"], ["SCO"])));

    [Fact]
    public void Codes_differ_stay_short_avoid_those_taken_and_never_change_when_a_name_is_added()
    {
        var name = Gen.String[Gen.Char["ABCDE fgé '-1上\ud83c"], 0, 12];
        Gen.Select(name.Array[0, 30], name, Gen.String[Gen.Char["ABF123"], 1, 4].Array[0, 5]).Sample((names, more, taken) =>
        {
            var codes = ShortCodes.For(names, taken);
            Assert.Equal(codes.Length, codes.Distinct(StringComparer.OrdinalIgnoreCase).Count());
            Assert.All(codes, c => Assert.InRange(c.Length, 1, LandLimits.MaxCodeLength));
            Assert.Empty(codes.Intersect(taken, StringComparer.OrdinalIgnoreCase));
            Assert.Equal(codes, ShortCodes.For([.. names, more], taken)[..codes.Length]);
        }, iter: 300);
    }

    [Fact]
    public void As_many_fields_as_a_farm_can_have_all_get_codes()
    {
        var codes = ShortCodes.For(Enumerable.Repeat("Field", LandLimits.MaxFields), []);
        Assert.Equal(LandLimits.MaxFields, codes.Distinct(StringComparer.Ordinal).Count());
    }
}
