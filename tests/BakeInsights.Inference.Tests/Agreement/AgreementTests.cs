using CsCheck;
using Xunit;

namespace BakeInsights.Inference.Tests;

public class AgreementTests
{
    private static readonly double[,] Six =
    {
        { 9, 2, 5, 8 }, { 6, 1, 3, 2 }, { 8, 4, 6, 8 }, { 7, 1, 2, 6 }, { 10, 5, 6, 9 }, { 6, 2, 4, 7 },
    };

    private static readonly double[,] Tied =
    {
        { 4, 4, 5 }, { 3, 3, 2 }, { 5, 5, 5 }, { 2, 3, 2 }, { 4, 5, 4 }, { 1, 2, 2 }, { 3, 3, 4 },
    };

    [Fact]
    public void Correlations_of_the_published_table_are_the_printed_ones()
    {
        // Shrout and Fleiss (1979), table 4, and their further digits in R.
        (AgreementKind Kind, double Single, double Mean)[] printed =
        [
            (AgreementKind.OneWay, 0.166, 0.443), (AgreementKind.Absolute, 0.290, 0.620),
            (AgreementKind.Consistency, 0.715, 0.909),
        ];
        foreach (var (kind, single, mean) in printed)
        {
            var correlation = IntraclassCorrelation.Of(RatingTable.Of(Six).Value, kind).Value;
            Close.Absolute(single, correlation.Single, 5e-4);
            Close.Absolute(mean, correlation.Mean, 5e-4);
            Close.Absolute(11.24, correlation.BetweenThings, 5e-3);
            Close.Absolute(6.26, correlation.WithinThings, 5e-3);
            Close.Absolute(32.49, correlation.BetweenJudges, 5e-3);
            Close.Absolute(1.02, correlation.Residual, 5e-3);
        }
    }

    [Theory]
    [InlineData("six", AgreementKind.OneWay, "one way")]
    [InlineData("six", AgreementKind.Absolute, "absolute")]
    [InlineData("six", AgreementKind.Consistency, "consistency")]
    [InlineData("tied", AgreementKind.OneWay, "one way")]
    [InlineData("tied", AgreementKind.Absolute, "absolute")]
    [InlineData("tied", AgreementKind.Consistency, "consistency")]
    public void Correlations_have_the_expected_intervals(string name, AgreementKind kind, string label)
    {
        var correlation = IntraclassCorrelation.Of(Table(name), kind).Value;
        double Value(string quantity) => MethodsExpected.Of(name, $"{label} {quantity}");

        Close.Relative(Value("single"), correlation.Single, 1e-10);
        Close.Relative(Value("mean"), correlation.Mean, 1e-10);
        Close.Relative(Value("single low"), correlation.SingleInterval(0.95).Low, 1e-8);
        Close.Relative(Value("single high"), correlation.SingleInterval(0.95).High, 1e-8);
        Close.Relative(Value("mean low"), correlation.MeanInterval(0.95)?.Low, 1e-8);
        Close.Relative(Value("mean high"), correlation.MeanInterval(0.95)?.High, 1e-8);
    }

    [Theory]
    [InlineData("six")]
    [InlineData("tied")]
    public void Ranks_agree_as_expected(string name)
    {
        var (judges, things) = (RankAgreement.OfJudges(Table(name)).Value, RankAgreement.OfThings(Table(name)).Value);

        Close.Relative(MethodsExpected.Of(name, "judges chi square"), judges.ChiSquare, 1e-12);
        Close.Relative(MethodsExpected.Of(name, "judges p"), judges.PValue, 1e-10);
        Close.Relative(MethodsExpected.Of(name, "things chi square"), things.ChiSquare, 1e-12);
        Close.Relative(MethodsExpected.Of(name, "things p"), things.PValue, 1e-10);
        Close.Relative(MethodsExpected.Of(name, "things W"), things.Concordance, 1e-12);
    }

    [Fact]
    public void Kappa_of_thirty_crumbs_is_the_expected_one()
    {
        int[,] thirty = { { 5, 2, 0, 0 }, { 1, 6, 2, 0 }, { 0, 2, 7, 1 }, { 0, 0, 1, 3 } };
        int[,] lopsided = { { 11, 3, 1 }, { 0, 8, 2 }, { 4, 1, 9 } };
        foreach (var (name, counts) in new[] { ("thirty", thirty), ("lopsided", lopsided) })
        {
            foreach (var weighting in Enum.GetValues<KappaWeighting>())
            {
                var kappa = Kappa.Of(counts, weighting).Value;
                double Value(string quantity) =>
                    MethodsExpected.Of(name, $"{weighting.ToString().ToLowerInvariant()} {quantity}");
                Close.Relative(Value("kappa"), kappa.Estimate, 1e-12);
                Close.Relative(Value("SE"), kappa.StandardError, 1e-11);
                Close.Relative(Value("chance SE"), kappa.ChanceStandardError, 1e-11);
            }
        }
    }

    [Fact]
    public void Kappa_weighs_near_disagreement_less()
    {
        int[] first = [0, 0, 1, 1, 2, 2, 3, 3], second = [1, 0, 1, 2, 2, 2, 3, 2];

        var plain = Kappa.Of(first, second, 4, KappaWeighting.None).Value;
        var squared = Kappa.Of(first, second, 4, KappaWeighting.Quadratic).Value;

        Assert.True(squared.Estimate > plain.Estimate);
        Assert.Equal(
            "There are 8 rated things; with 4 categories the interval needs 32 or more to be trusted.",
            Assert.Single(plain.Caveats));
        Assert.InRange(plain.PValue!.Value, 0, 0.05);
        Assert.True(plain.Interval(0.95).High <= 1);
    }

    [Fact]
    public void Full_agreement_is_one_without_error()
    {
        var kappa = Kappa.Of(new[,] { { 4, 0 }, { 0, 3 } }, KappaWeighting.Linear).Value;

        Assert.Equal((1, 0), (kappa.Estimate, kappa.StandardError));
    }

    [Fact]
    public void Kappa_does_not_mind_which_rater_is_first() =>
        Gen.Int[0, 9].Array[9].Where(c => c.Sum() > 3).Sample(cells =>
        {
            var (counts, turned) = (new int[3, 3], new int[3, 3]);
            for (var i = 0; i < 9; i++)
            {
                counts[i / 3, i % 3] = turned[i % 3, i / 3] = cells[i];
            }

            var (one, other) = (Kappa.Of(counts, KappaWeighting.Linear), Kappa.Of(turned, KappaWeighting.Linear));
            return one.Succeeded == other.Succeeded && (!one.Succeeded || (double.IsFinite(one.Value.StandardError)
                && Math.Abs(one.Value.Estimate - other.Value.Estimate) < 1e-12
                && Math.Abs(one.Value.StandardError - other.Value.StandardError) < 1e-9));
        });

    [Fact]
    public void Correlations_do_not_mind_unit_and_zero() =>
        Gen.Int[0, 20].Array[12].Sample(values =>
        {
            var (given, other) = (new double[4, 3], new double[4, 3]);
            for (var i = 0; i < 12; i++)
            {
                given[i / 3, i % 3] = values[i];
                other[i / 3, i % 3] = 5 + (1e40 * values[i]);
            }

            foreach (var kind in Enum.GetValues<AgreementKind>())
            {
                var (one, two) = (Of(given, kind), Of(other, kind));
                Assert.Equal(one.Succeeded, two.Succeeded);
                if (one.Succeeded)
                {
                    Assert.Equal(one.Value.Single, two.Value.Single, 1e-9);
                    var interval = one.Value.SingleInterval(0.9);
                    Assert.True(interval.Low <= interval.High + 1e-12);
                    Assert.True(double.IsFinite(interval.Low) && double.IsFinite(interval.High));

                    // The interval of absolute agreement rests on an approximate number of degrees of freedom (McGraw and
                    // Wong 1996), and with a negative estimate, one time in thousands, it lies beside it.
                    Assert.True(kind == AgreementKind.Absolute || interval.Low <= one.Value.Single + 1e-9);
                }
            }

            static Attempt<IntraclassCorrelation> Of(double[,] ratings, AgreementKind kind) =>
                IntraclassCorrelation.Of(RatingTable.Of(ratings).Value, kind);
        });

    [Fact]
    public void Ratings_without_an_answer_are_problems()
    {
        IsProblem(
            RatingTable.Of(new double[1, 3]), FitProblemKind.TooFewRows,
            "There are 1 things and 3 judges, and at least 2 of each are needed.", "Add things or judges.");
        IsProblem(
            RatingTable.Of(new[,] { { 1, 2 }, { 3, double.NaN } }), FitProblemKind.MissingValue,
            "The rating of thing 2 by judge 2 is not a finite number.",
            "Give the missing rating, or leave the thing or the judge out.");
        IsProblem(
            IntraclassCorrelation.Of(RatingTable.Of(new[,] { { 1.0, 2 }, { 3, 4 } }).Value, AgreementKind.Absolute),
            FitProblemKind.NoSpread,
            "The judges' ratings differ nowhere, or by the same amount throughout, so there is no spread to compare "
                + "the things with.",
            "Add things or judges, or rate on a finer scale.");
        IsProblem(
            RankAgreement.OfJudges(RatingTable.Of(new[,] { { 1.0, 1 }, { 3, 3 } }).Value), FitProblemKind.NoSpread,
            "Every row of ratings is tied throughout, so nothing is ranked.",
            "Add rows whose ratings differ, or rate on a finer scale.");
        IsProblem(
            Kappa.Of(new[,] { { 5, 0 }, { 0, 0 } }, KappaWeighting.None), FitProblemKind.NoSpread,
            "Both raters use one and the same category throughout, so agreement can't be told from chance.",
            "Add things that are rated differently.");
        IsProblem(
            Kappa.Of(new[,] { { 1, 0 }, { 0, 0 } }, KappaWeighting.None), FitProblemKind.TooFewRows,
            "There are ratings of 1 things, and at least 2 are needed.", "Add rated things.");
    }

    [Fact]
    public void Tables_that_are_no_tables_are_refused()
    {
        Throws("Kappa needs a square table of counts", () => Kappa.Of(new int[2, 3], KappaWeighting.None));
        Throws("The raters need as many ratings", () => Kappa.Of([1], [1, 2], 3, KappaWeighting.None));
        Throws("A level lies between 0 and 1", () =>
            Kappa.Of(new[,] { { 5, 1 }, { 0, 3 } }, KappaWeighting.None).Value.Interval(95));
        Throws("A level lies between 0 and 1", () =>
            IntraclassCorrelation.Of(Table("six"), AgreementKind.Absolute).Value.SingleInterval(95));
    }

    private static RatingTable Table(string name) => RatingTable.Of(name == "six" ? Six : Tied).Value;

    private static void IsProblem<T>(Attempt<T> attempt, FitProblemKind kind, string message, string remedy)
        where T : notnull
    {
        Assert.False(attempt.TryGet(out _, out var problem));
        Assert.Equal((kind, message, remedy), (problem.Kind, problem.Message, problem.Remedy));
    }

    private static void Throws(string message, Func<object> action) =>
        Assert.StartsWith(message, Assert.ThrowsAny<ArgumentException>(action).Message);
}
