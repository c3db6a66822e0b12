using CsCheck;
using Xunit;

namespace BakeInsights.Tests;

public class TemperatureRuleTests
{
    private static readonly Gen<double> DegreesF = Gen.Double[30, 110];

    [Fact]
    public void The_rule_gives_one_water_temperature_whether_asked_in_F_or_in_C() =>
        Gen.Select(DegreesF, DegreesF, DegreesF, Gen.Double[0, 40]).Sample((dough, room, flour, friction) =>
        {
            var byF = (3 * dough) - room - flour - friction;
            var byC = (3 * Celsius(dough)) - Celsius(room) - Celsius(flour) - (friction * 5 / 9);
            var ours = TemperatureRule.Water(F(dough), F(room), F(flour), TemperatureDifference.FromF(friction));
            return Math.Abs(ours.F - byF) < 1e-9 && Math.Abs(ours.C - byC) < 1e-9;
        });

    [Fact]
    public void With_the_32_in_the_friction_the_answer_would_be_another()
    {
        var right = TemperatureRule.Water(F(75), F(65), F(65), TemperatureDifference.FromF(8));
        var wrong = TemperatureRule.Water(F(75), F(65), F(65), TemperatureDifference.FromC(Celsius(8)));
        Assert.Equal(17.8, (wrong - right).C, 0.05);
    }

    [Fact]
    public void Water_dough_and_friction_agree_with_each_other() =>
        Gen.Select(DegreesF, DegreesF, DegreesF, DegreesF, Gen.Bool).Sample((dough, room, flour, fourth, hasFourth) =>
        {
            Temperature? preferment = hasFourth ? F(fourth) : null;
            var friction = TemperatureDifference.FromF(12);
            var water = TemperatureRule.Water(F(dough), F(room), F(flour), friction, preferment);
            return Near(TemperatureRule.Dough(water, F(room), F(flour), friction, preferment).F, dough)
                && Near(TemperatureRule.Friction(F(dough), F(room), F(flour), water, preferment).F, 12);
        });

    [Fact]
    public void Published_friction_factors_are_differences()
    {
        Assert.Equal(2.8, FrictionFactors.Hand.C, 0.05);
        Assert.Equal(11.1, FrictionFactors.StandMixer.C, 0.05);
        Assert.Equal(13.9, FrictionFactors.FoodProcessor.C, 0.05);
        Assert.Throws<ArgumentOutOfRangeException>(() => FrictionFactors.OfMixing(-1));
    }

    private static Temperature F(double degrees) => Temperature.FromF(degrees);

    private static double Celsius(double degreesF) => (degreesF - 32) * 5 / 9;

    private static bool Near(double left, double right) => Math.Abs(left - right) < 1e-9;
}
