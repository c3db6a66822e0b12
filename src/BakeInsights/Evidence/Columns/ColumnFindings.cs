using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>Makes one question of a family from a column's answer.</summary>
internal static class ColumnFindings
{
    // Standardised residuals beyond this are far off, as in the other models' checks.
    private const double Far = 3;

    /// <summary>The finding, from the fit and the largest difference that it has.</summary>
    public static Finding Of(ColumnFit fit, ColumnDifference largest)
    {
        var rows = fit.Rows;
        var odd = OddBakes(fit);
        var title = rows.Column.Title;
        return new Finding
        {
            Name = $"{ResultQuestion.KeyOf(rows.Question.Result)}.{rows.Column.Name}",
            Question = rows.Form switch
            {
                ColumnForm.Levels => $"Does the {rows.Question.Name} differ by {title}?",
                ColumnForm.Line => $"Does the {rows.Question.Name} go up or down with {title}?",
                _ => $"Does the {rows.Question.Name} change with {title}?",
            },
            Result = rows.Question.Result,
            Contrast = largest is { FromNumber: { } from, ToNumber: { } to } && rows.Column.Dimension != Dimension.Number
                ? Contrast.More(ColumnMeasure.Of(rows.Column), to - from)
                : Contrast.Between($"{title}: {largest.To} against {largest.From}"),
            Effect = largest.Effect,
            EffectPct = largest.EffectPct,
            PValue = fit.Test.PValue!.Value,
            Bakes = rows.Bakes,
            LeftOut = rows.LeftOutBakes,
            OddBakes = odd,
            WithoutOddBakes = Without(fit, largest, odd),
            MovedTogetherWith = MovedTogether(fit),
            Caveats = [.. NotHeldStill(fit), .. Caveats(fit)],
            NextStep = rows.Form == ColumnForm.Levels
                ? $"Bake pairs on the same day that differ in {title} alone."
                : $"Bake two doughs on the same day, one low and one high in {title}, all else alike.",
        };
    }

    private static IReadOnlyList<OddBake> OddBakes(ColumnFit fit) =>
    [
        .. RowInfluence.Of(fit.Fit).Where(row => Math.Abs(row.Studentised ?? 0) > Far)
            .Select(row => new OddBake(fit.Rows.Bakes[row.Row], $"its {fit.Rows.Question.Name} lies far from that of bakes like it")),
    ];

    private static Estimate? Without(ColumnFit fit, ColumnDifference largest, IReadOnlyList<OddBake> odd)
    {
        if (odd.Count == 0)
        {
            return null;
        }

        var rest = fit.Rows.Less([.. odd.Select(one => one.Bake)]);
        return ColumnProblems.Find(rest) is null && ColumnFit.Make(rest).TryGet(out var refit, out _)
            ? ColumnEffects.Same(refit, largest)?.Effect
            : null;
    }

    // A cause that the column's own terms foretell so far that its variance inflation passes the usual limit.
    private static IReadOnlyList<Measure> MovedTogether(ColumnFit fit)
    {
        var own = fit.Fit.Design.Columns.TakeLast(fit.Test.ExtraDegreesOfFreedom).ToArray();
        var constant = DesignColumn.Constant(fit.Rows.Bakes.Count);
        return
        [
            .. fit.Rows.HeldStill.Where(term => term.Causes.Count == 1 && LeastSquares
                    .Fit(new Design([constant, .. own]), term.ColumnOf(fit.Rows.Bakes).Values)
                    .TryGet(out var foretold, out _) && foretold.RSquared > BakeInsights.MovedTogether.AlarmingSquare)
                .Select(term => term.Causes[0].Measure).Distinct(),
        ];
    }

    /// <summary>What the model lacks, for a finding that is shown without the rest of its answer.</summary>
    public static IEnumerable<string> NotHeldStill(ColumnFit fit) => fit.Rows.LeftOutTerms.Count == 0
        ? []
        : [$"Not held still: {string.Join(", ", fit.Rows.LeftOutTerms.Select(term => term.Name.Replace('_', ' ')))}."];

    /// <summary>What to bear in mind.</summary>
    public static IEnumerable<string> Caveats(ColumnFit fit)
    {
        if (fit.Rows.Form == ColumnForm.Levels && fit.Test.ExtraDegreesOfFreedom > 1)
        {
            yield return "The difference named is the largest of all pairs; its interval counts that it was picked.";
        }

        if (fit.Rows.Form == ColumnForm.Curve)
        {
            yield return "The difference named is the largest along the curve; its interval counts that it was picked.";
        }

        yield return ModelAnswer.NotACause;
    }
}
