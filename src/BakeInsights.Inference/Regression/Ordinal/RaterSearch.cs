namespace BakeInsights.Inference;

/// <summary>The search for the most likely spread of raters.</summary>
internal static class RaterSearch
{
    /// <summary>A spread this small on the logit scale is zero: it moves no probability by a thousandth.</summary>
    private const double NoSpread = 1e-3;

    /// <summary>Fewer raters say little about how raters differ. Common practice, no source.</summary>
    private const int FewRaters = 5;

    /// <summary>Starts from the fit without raters and a spread of one logit.</summary>
    public static Attempt<OrdinalFit> Find(
        Design design, OrdinalData data, OrdinalFit plain, IReadOnlyList<string> raters)
    {
        string[] names = [.. raters.Distinct()];
        int[] raterOfRow = [.. raters.Select(r => Array.IndexOf(names, r))];
        int[][] rows = [.. names.Select((_, r) =>
            Enumerable.Range(0, data.N).Where(i => raterOfRow[i] == r).ToArray())];
        var likelihood = new RaterLikelihood(data, rows);
        double[] withoutRaters = [.. plain.Thresholds.Concat(plain.Terms).Select(t => t.Estimate)];

        var found = NewtonMaximum.Find(likelihood.At, [.. withoutRaters, 1], concave: false);
        var spread = Math.Abs(found.Point[^1]);
        if (found is { Converged: true, Factor: { } factor } && spread > NoSpread)
        {
            var error = Math.Sqrt(factor.Inverse()[withoutRaters.Length, withoutRaters.Length]);
            var sign = Math.Sign(found.Point[^1]);
            Term Shift(string name, int r)
            {
                var (mean, deviation) = likelihood.Shift(rows[r], found.Point);
                return new Term(name, sign * spread * mean, spread * deviation, double.PositiveInfinity);
            }

            return new OrdinalFit(design, data, found, factor, new RaterEstimates(
                new Term("rater spread", spread, error, double.PositiveInfinity),
                [.. names.Select(Shift)],
                raterOfRow,
                names.Length < FewRaters ? [Few(names.Length)] : []));
        }

        // The likelihood is even in the spread, so zero is always stationary: a maximum where it curves down.
        var atZero = likelihood.At([.. withoutRaters, 0]);
        return spread <= NoSpread && atZero?.Curvature[withoutRaters.Length, withoutRaters.Length] >= 0
            ? WithoutSpread(design, data, withoutRaters, names, raterOfRow)
            : new FitProblem(
                FitProblemKind.NoConvergence,
                ["rater", .. design.Names],
                "The search for the spread of raters came to no end: within raters, the columns tell scores apart "
                    + "almost without error.",
                "Add scores that overlap within raters, join scores, or fit without raters.");
    }

    private static OrdinalFit WithoutSpread(
        Design design, OrdinalData data, double[] withoutRaters, string[] names, int[] raterOfRow)
    {
        var found = NewtonMaximum.Find(data.At, withoutRaters, concave: true);
        List<string> caveats =
            ["The raters differ no more than chance would make them, so their spread is estimated as zero."];
        if (names.Length < FewRaters)
        {
            caveats.Add(Few(names.Length));
        }

        return new OrdinalFit(design, data, found, found.Factor!, new RaterEstimates(
            new Term("rater spread", 0, 0, double.PositiveInfinity),
            [.. names.Select(name => new Term(name, 0, 0, double.PositiveInfinity))],
            raterOfRow,
            caveats));
    }

    private static string Few(int count) =>
        $"With {count} raters the spread between raters is poorly known; {FewRaters} or more are advised.";
}
