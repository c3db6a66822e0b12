using System.Globalization;

namespace BakeInsights.Reports;

/// <summary>The parts that every answer of a model is shown with.</summary>
internal static class AnswerBlocks
{
    /// <summary>The coefficients, for readers who want the numbers behind the words.</summary>
    public static ViewTable Coefficients(ModelAnswer answer) => new(
        $"The fit in numbers: {answer.Model}.",
        [
            new ViewColumn("Term", false),
            new ViewColumn("Unit", false),
            new ViewColumn("Estimate", true),
            new ViewColumn("Standard error", true),
            new ViewColumn("95 % interval", true),
            new ViewColumn("p", true),
        ],
        [.. answer.Terms.Select(Row)]);

    /// <summary>What the answer rests on: bakes used, bakes and terms left out.</summary>
    public static ViewParagraph Basis(ModelAnswer answer, int bakes) =>
        Basis(answer.UsedCount, bakes, answer.LeftOutBakes, answer.LeftOutTerms, "Not in the model");

    /// <summary>The same for what is no model's answer.</summary>
    /// <param name="used">How many bakes were used.</param>
    /// <param name="bakes">How many were asked about.</param>
    /// <param name="leftOutBakes">The others, by reason.</param>
    /// <param name="leftOutTerms">Terms that are missing.</param>
    /// <param name="missing">What is said of such a term.</param>
    public static ViewParagraph Basis(
        int used, int bakes, IReadOnlyList<LeftOutBakes> leftOutBakes, IReadOnlyList<LeftOutTerm> leftOutTerms, string missing)
    {
        var sentences = new List<string> { $"This rests on {used} of {JournalView.Count(bakes, "bake")}." };
        if (leftOutBakes.Count > 0)
        {
            var groups = leftOutBakes.Select(left =>
                $"{left.Count.ToString(CultureInfo.InvariantCulture)} with {left.Reason}{Named(left.Bakes)}");
            sentences.Add($"Left out: {string.Join("; ", groups)}.");
        }

        sentences.AddRange(leftOutTerms.Select(left => $"{missing}: {Words(left.Name)}. {left.Reason}"));
        return new ViewParagraph(string.Join(" ", sentences));
    }

    /// <summary>Checks that failed, and the caveats.</summary>
    public static ViewList Reservations(ModelAnswer answer) =>
        new([.. answer.Checks.Where(check => !check.Passed).Select(check => check.Statement), .. answer.Caveats]);

    private static string Named(IReadOnlyList<Bake> bakes)
    {
        const int most = 6;
        if (bakes.Count == 0)
        {
            return "";
        }

        var names = string.Join(", ", bakes.Take(most).Select(bake => bake.Id));
        return bakes.Count > most ? $" ({names}, …)" : $" ({names})";
    }

    private static IReadOnlyList<string> Row(AnswerTerm term)
    {
        var interval = term.Coefficient.Interval(ModelAnswer.Level);
        return
        [
            Words(term.Name),
            term.Unit,
            Figures.Significant(term.Coefficient.Estimate),
            Figures.Significant(term.Coefficient.StandardError, 2),
            $"{Figures.Significant(interval.Low)} to {Figures.Significant(interval.High)}",
            term.Coefficient.PValue is { } p ? Figures.Probability(p) : "–",
        ];
    }

    private static string Words(string name) => name.Replace('_', ' ');
}
