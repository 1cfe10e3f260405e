using CsCheck;

namespace Watersown.Stand;

public sealed class StudentTReference
{
    // NIST/SEMATECH e-Handbook of Statistical Methods, section 1.3.6.7.2, critical values of Student's t (from memory);
    // 1.383, 1.328 and 1.294 also printed in the Mississippi and Colorado adequacy rules.
    [Theory]
    [InlineData(0.90, 1, 3.078)]
    [InlineData(0.90, 2, 1.886)]
    [InlineData(0.90, 9, 1.383)]
    [InlineData(0.90, 19, 1.328)]
    [InlineData(0.90, 71, 1.294)]
    [InlineData(0.95, 1, 6.314)]
    [InlineData(0.95, 2, 2.920)]
    [InlineData(0.95, 5, 2.015)]
    [InlineData(0.95, 10, 1.812)]
    [InlineData(0.95, 30, 1.697)]
    [InlineData(0.975, 1, 12.706)]
    [InlineData(0.975, 2, 4.303)]
    [InlineData(0.975, 3, 3.182)]
    [InlineData(0.975, 4, 2.776)]
    [InlineData(0.975, 5, 2.571)]
    [InlineData(0.975, 9, 2.262)]
    [InlineData(0.975, 10, 2.228)]
    [InlineData(0.975, 15, 2.131)]
    [InlineData(0.975, 19, 2.093)]
    [InlineData(0.975, 20, 2.086)]
    [InlineData(0.975, 30, 2.042)]
    [InlineData(0.975, 60, 2.000)]
    [InlineData(0.975, 100, 1.984)]
    [InlineData(0.99, 2, 6.965)]
    [InlineData(0.99, 10, 2.764)]
    [InlineData(0.99, 30, 2.457)]
    [InlineData(0.995, 1, 63.657)]
    [InlineData(0.995, 5, 4.032)]
    [InlineData(0.995, 10, 3.169)]
    [InlineData(0.995, 30, 2.750)]
    [InlineData(0.999, 2, 22.327)]
    [InlineData(0.999, 5, 5.893)]
    [InlineData(0.999, 10, 4.144)]
    public void Printed_tables_come_out(double probability, double freedom, double t) => Assert.Equal(t, StudentT.Quantile(probability, freedom), 0.00051);

    // Derived in closed form: one degree of freedom is tan(π (p - 1/2)); two are (2p - 1) / √(2 p (1 - p)).
    [Theory]
    [InlineData(0.6)]
    [InlineData(0.9)]
    [InlineData(0.975)]
    [InlineData(0.9999)]
    [InlineData(0.025)]
    public void One_and_two_degrees_of_freedom_have_closed_forms(double p)
    {
        var one = Math.Tan(Math.PI * (p - 0.5));
        var two = ((2 * p) - 1) / Math.Sqrt(2 * p * (1 - p));
        Assert.Equal(one, StudentT.Quantile(p, 1), 1e-9 * (1 + Math.Abs(one)));
        Assert.Equal(two, StudentT.Quantile(p, 2), 1e-9 * (1 + Math.Abs(two)));
    }

    // The normal law's 0.975 point is 1.959963984540 (standard tables); t lies above it by (z³ + z) / (4 ν) to first order (derived).
    [Fact]
    public void Many_degrees_of_freedom_come_near_the_normal_law()
    {
        const double Z = 1.959963984540054;
        Assert.Equal(Z + (((Z * Z * Z) + Z) / 4e6), StudentT.Quantile(0.975, 1e6), 1e-9);
    }

    // Independent way, for broken degrees of freedom too: with t = √ν tan θ the density becomes cos^(ν-1) θ, summed by Simpson's rule.
    [Fact]
    public void The_chance_below_is_the_area_under_the_density() => Gen.Select(Gen.Double[1.5, 80], Gen.Double[0.05, 6]).Sample((freedom, t) =>
    {
        double Area(double until)
        {
            const int Steps = 4000;
            double h = until / Steps, sum = 0;
            for (var i = 0; i <= Steps; i++) sum += (i == 0 || i == Steps ? 1 : i % 2 == 1 ? 4 : 2) * Math.Pow(Math.Cos(i * h), freedom - 1);
            return sum * h / 3;
        }

        var expected = 0.5 + (Area(Math.Atan(t / Math.Sqrt(freedom))) / Area(Math.PI / 2) / 2);
        Assert.Equal(expected, StudentT.Below(t, freedom), 1e-5);
        Assert.Equal(1 - StudentT.Below(t, freedom), StudentT.Below(-t, freedom), 1e-12);
        Assert.Equal(t, StudentT.Quantile(StudentT.Below(t, freedom), freedom), 1e-6 * (1 + t));
    });

    [Theory]
    [InlineData(0, 5)]
    [InlineData(1, 5)]
    [InlineData(0.9, 0)]
    public void A_chance_or_freedom_that_cannot_be_is_a_bug(double probability, double freedom) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => StudentT.Quantile(probability, freedom));
}
