namespace BakeInsights;

/// <summary>A result along one cause, a line for all groups and one for each, other causes as in the average bake used.</summary>
/// <param name="Answer">The answer that the lines are of.</param>
/// <param name="Cause">The cause.</param>
/// <param name="At">The values of the cause that lines are given at, rising, in its canonical unit.</param>
/// <param name="Common">The common line: a group in the middle of groups such as these; in the result's canonical unit.</param>
/// <param name="Groups">The groups in the order of their names.</param>
public sealed record GroupLines(
    GroupAnswer Answer, Measure Cause, IReadOnlyList<double> At, IReadOnlyList<double> Common, IReadOnlyList<GroupLine> Groups)
{
    private const int Points = 40;

    /// <summary>
    /// The lines; null where the cause isn't one that the answer holds still by a single term. A group's line runs beside the
    /// common one, drawn towards it as far as its bakes are few, with the interval of its distance; with two groups it
    /// is its own bakes' line with its interval.
    /// </summary>
    internal static GroupLines? Of(GroupAnswer answer, GroupFit model, Measure cause)
    {
        var rows = model.Fixed.Rows;
        var terms = rows.HeldStill.Where(term => term.Causes.Any(one => one.Measure == cause)).ToList();
        if (terms is not [{ Causes.Count: 1 } term])
        {
            return null;
        }

        // The columns of the fits are the constant, the causes held still, and, where they are fixed, the groups.
        var place = 1 + rows.HeldStill.ToList().IndexOf(term);
        var (own, design) = (model.Fixed.Test.ExtraDegreesOfFreedom, model.Fixed.Fit.Design);
        var coefficients = (model.Mixed?.Terms ?? model.Fixed.Fit.Terms).Take(1 + rows.HeldStill.Count).Select(one => one.Estimate).ToArray();
        var averages = design.Columns.Take(coefficients.Length).Select(column => column.Values.Average()).ToArray();
        double[] tried = [.. rows.Bakes.Select(bake => cause.Of(bake)!.Value)];
        double[] at = [.. Enumerable.Range(0, Points).Select(i => tried.Min() + (i * (tried.Max() - tried.Min()) / (Points - 1)))];
        double[] Row(double value) => [.. averages.Select((average, j) => j == place ? term.ValueFrom(_ => value)!.Value : average)];
        double Line(IReadOnlyList<double> row) => row.Zip(coefficients, (x, b) => x * b).Sum();

        var moved = rows.Bakes.Select((bake, row) => model.Fixed.Fit.Response[row]
            - Enumerable.Range(0, coefficients.Length).Where(j => j != place)
                .Sum(j => coefficients[j] * (design.Columns[j].Values[row] - averages[j]))).ToList();
        var scale = model.Fixed.Scale;
        Estimate Own(double value, int group)
        {
            var mean = model.Fixed.Fit.Combination([.. Row(value), .. Indicator(own, group)]);
            var interval = mean.Interval(ModelAnswer.Level);
            return new Estimate(mean.Estimate, interval.Low, interval.High);
        }

        Estimate Pooled(double value, Estimate effect)
        {
            var common = Line(Row(value));
            return effect.Through(departure => common + departure);
        }

        var pooled = GroupEffects.Pooled(model);
        return new GroupLines(
            answer,
            cause,
            at,
            [.. at.Select(value => scale.Back(model.Mixed is null
                ? model.Fixed.Fit.Combination([.. Row(value), .. Enumerable.Repeat(1.0 / (own + 1), own)]).Estimate
                : Line(Row(value))))],
            [
                .. answer.Groups.Select((group, i) => new GroupLine(
                    group,
                    [.. at.Select(value => (pooled.TryGetValue(group.Group, out var effect) ? Pooled(value, effect) : Own(value, i)).Through(scale.Back))],
                    [
                        .. rows.Bakes.Select((bake, row) => (bake, row)).Where(one => answer.GroupOf(one.bake) == group.Group)
                            .Select(one => new MovedBake(one.bake, tried[one.row], scale.Back(moved[one.row]))),
                    ])),
            ]);
    }

    private static double[] Indicator(int count, int group) => [.. Enumerable.Range(1, count).Select(other => other == group ? 1.0 : 0.0)];
}

/// <summary>One group's line.</summary>
/// <param name="Group">The group.</param>
/// <param name="Line">The line at each value of the cause, with its 95 % interval; in the result's canonical unit.</param>
/// <param name="Bakes">Its bakes.</param>
public sealed record GroupLine(GroupResult Group, IReadOnlyList<Estimate> Line, IReadOnlyList<MovedBake> Bakes);

/// <summary>A bake moved by a fit to other causes as in the average bake used.</summary>
/// <param name="Bake">The bake.</param>
/// <param name="Cause">Its value of the cause, in the canonical unit.</param>
/// <param name="Result">Its result as moved, in the canonical unit.</param>
public sealed record MovedBake(Bake Bake, double Cause, double Result);
