using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>What a journal says about how far groups of bakes lie apart.</summary>
public sealed class GroupAnswer
{
    private readonly GroupFit _model;
    private readonly ColumnLevels _levels;

    // The intervals that average over the spread take longer than all the rest, and a family of questions has no use for them.
    private readonly Lazy<IReadOnlyList<GroupResult>> _groups;

    internal GroupAnswer(GroupFit model)
    {
        _model = model;
        _levels = model.Fixed.Rows.LevelsOf(model.Fixed.Rows.Column);
        Overall = model.Fixed.Scale.Back(model.Mixed is { } mixed
            ? mixed.Combination(Average(mixed.Design)).Estimate
            : Fit.Combination(model.Fixed.AverageRow(Even(Test.ExtraDegreesOfFreedom))).Estimate);
        _groups = new(() => GroupEffects.Of(model, Overall));
        (Spread, SpreadPct) = GroupEffects.Spread(model, Overall);
        Largest = ColumnEffects.Largest(model.Fixed);
        Caveats = [.. GroupFindings.Caveats(this)];
        Finding = GroupFindings.Of(this);
    }

    /// <summary>The measure that the answer explains.</summary>
    public Measure Result => _model.Fixed.Rows.Question.Result;

    /// <summary>What the result is called in sentences.</summary>
    public string ResultName => _model.Fixed.Rows.Question.Name;

    /// <summary>The name of the column that names the groups.</summary>
    public string Column => _model.Fixed.Rows.Column.Name;

    /// <summary>The column's name for people.</summary>
    public string ColumnTitle => _model.Fixed.Rows.Column.Title;

    /// <summary>The groups in the order of their names, whatever their results.</summary>
    public IReadOnlyList<GroupResult> Groups => _groups.Value;

    /// <summary>The mean of a group like these, the other causes as in the average bake used; in the result's unit.</summary>
    public double Overall { get; }

    /// <summary>
    /// How far a group lies from the mean of all, one standard deviation, with its interval; the lower end is 0 where chance
    /// alone could have it so, the upper null where the groups lie closer together than chance has them. The whole is null
    /// with two groups.
    /// </summary>
    public Estimate? Spread { get; }

    /// <summary>The same in percent, where the model speaks in percent; otherwise null.</summary>
    public Estimate? SpreadPct { get; }

    /// <summary>The largest difference between two groups by their own bakes; its interval counts that it was picked.</summary>
    public ColumnDifference Largest { get; }

    /// <summary>The F test that all groups are alike.</summary>
    public NestedComparison Test => _model.Fixed.Test;

    /// <summary>How often chance alone would set the groups as far apart as this, if they were alike.</summary>
    public double PValue => Test.PValue!.Value;

    /// <summary>The bakes that the answer rests on.</summary>
    public IReadOnlyList<Bake> Used => _model.Fixed.Rows.Bakes;

    /// <summary>The bakes that it does not rest on, by reason.</summary>
    public IReadOnlyList<LeftOutBakes> LeftOutBakes => _model.Fixed.Rows.LeftOutBakes;

    /// <summary>The terms of the causes that were held still.</summary>
    public IReadOnlyList<string> HeldStill => [.. _model.Fixed.Rows.HeldStill.Select(term => term.Name)];

    /// <summary>The terms of causes that the bakes can't support, with the reason.</summary>
    public IReadOnlyList<LeftOutTerm> LeftOutTerms => _model.Fixed.Rows.LeftOutTerms;

    /// <summary>The fit with a mean for each group; of times the response is the logarithm of minutes.</summary>
    public LeastSquaresFit Fit => _model.Fixed.Fit;

    /// <summary>The mixed model that the groups' effects come from; null with two groups.</summary>
    public MixedFit? Mixed => _model.Mixed;

    /// <summary>What to bear in mind, one sentence each.</summary>
    public IReadOnlyList<string> Caveats { get; }

    /// <summary>The answer as one question of a family, not yet judged.</summary>
    public Finding Finding { get; }

    /// <summary>The group of a bake used, as <see cref="Groups"/> spells it.</summary>
    public string GroupOf(Bake bake) => _levels.NameOf(bake);

    internal ColumnFit FixedFit => _model.Fixed;

    /// <summary>How many bakes each group has, in the order of their names.</summary>
    internal IReadOnlyList<int> Counts => [.. Enumerable.Range(0, _levels.Names.Count).Select(_levels.Count)];

    private static double[] Average(Design design) => [.. design.Columns.Select(column => column.Values.Average())];

    // Halfway between two groups.
    private static double[] Even(int others) => [.. Enumerable.Repeat(1.0 / (others + 1), others)];
}
