using System.Globalization;

namespace BakeInsights;

/// <summary>Turns the cells of one row into a bake, or says why it can't.</summary>
internal sealed class RowReader(IReadOnlyList<ColumnBinding> bindings)
{
    // Without the column the header has had its notice already; one for each row would drown the others.
    private readonly bool _hasYeastKind = bindings.Any(binding => binding.Column == BakeColumns.YeastKind);

    /// <summary>
    /// The bake, or null when the row is set aside; either way each cell that was not understood leaves a notice.
    /// </summary>
    /// <param name="cells">The row's cells; those missing at its end are empty.</param>
    /// <param name="at">Where the row stands.</param>
    /// <param name="fallbackId">What the bake is called when it has no name of its own.</param>
    /// <param name="notices">Takes the remarks.</param>
    public Bake? Read(IReadOnlyList<string> cells, SourceLine at, string fallbackId, ICollection<Notice> notices)
    {
        if (cells.All(string.IsNullOrWhiteSpace))
        {
            notices.Add(Notices.RowEmpty(at, string.Join(',', cells)));
            return null;
        }

        if (Day(cells, at, notices) is not { } day)
        {
            return null;
        }

        var id = CellOf(BakeColumns.Id, cells);
        var draft = new BakeDraft(id.Length > 0 ? id : fallbackId, day);
        ReadWords(cells, at, draft, notices);
        ReadQuantities(cells, at, draft, notices);
        return draft.Finish(at);
    }

    private DateOnly? Day(IReadOnlyList<string> cells, SourceLine at, ICollection<Notice> notices)
    {
        var text = CellOf(BakeColumns.BakedOn, cells);
        if (text.Length == 0)
        {
            notices.Add(Notices.DateMissing(at));
            return null;
        }

        if (DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day))
        {
            return day;
        }

        notices.Add(Notices.DateUnread(at, text));
        return null;
    }

    private void ReadWords(IReadOnlyList<string> cells, SourceLine at, BakeDraft draft, ICollection<Notice> notices)
    {
        foreach (var binding in bindings)
        {
            var text = Cell(binding, cells);
            if (text.Length == 0 || binding.Column == BakeColumns.Id || binding.Column == BakeColumns.BakedOn)
            {
                continue;
            }

            switch (binding.Column)
            {
                case null:
                    draft.Keep(binding.Header, text);
                    break;
                case TextColumn column:
                    draft.Set(column, text);
                    break;
                case ChoiceColumn column when column.Values.Contains(text.ToLowerInvariant()):
                    draft.Set(column, text.ToLowerInvariant());
                    break;
                case ChoiceColumn column:
                    notices.Add(Notices.ChoiceUnknown(at, column, binding.Header, text));
                    break;
            }
        }
    }

    private void ReadQuantities(IReadOnlyList<string> cells, SourceLine at, BakeDraft draft, ICollection<Notice> notices)
    {
        var words = draft.Finish(at);
        foreach (var binding in bindings)
        {
            if (binding.Column is not QuantityColumn column || Cell(binding, cells) is not { Length: > 0 } text)
            {
                continue;
            }

            var cup = column == BakeColumns.Flour
                ? FlourCup(binding, text, at, words, draft, notices)
                : HouseholdWeights.Of(column.Stem);
            if (QuantityReader.Read(binding, text, at, cup, notices) is { } value)
            {
                draft.Set(column, value);
            }

            if (column == BakeColumns.Yeast && words.YeastKind is null && _hasYeastKind)
            {
                notices.Add(Notices.YeastKindMissing(at, binding.Header, text));
            }
        }
    }

    // A cup of flour without a word on how it was filled is marked so in the bake itself: later steps ask the bake.
    private static HouseholdWeight? FlourCup(
        ColumnBinding binding, string text, SourceLine at, Bake words, BakeDraft draft, ICollection<Notice> notices)
    {
        var byCup = QuantityText.TryParse(text, out var quantity)
            && (quantity.Unit ?? binding.Unit)?.Dimension == Dimension.Volume;
        if (!byCup)
        {
            return null;
        }

        if (words.FlourMeasure is { } measure && HouseholdWeights.OfFlour(measure) is { } weight)
        {
            return weight;
        }

        var unknown = HouseholdWeights.OfFlour(FlourMeasure.CupUnknown)!;
        notices.Add(Notices.FlourCupMethodMissing(at, binding.Header, text, unknown));
        draft.Set(BakeColumns.FlourMeasure, BakeColumns.FlourMeasure.Values[(int)FlourMeasure.CupUnknown]);
        return unknown;
    }

    private string CellOf(BakeColumn column, IReadOnlyList<string> cells) =>
        bindings.FirstOrDefault(binding => binding.Column == column) is { } found ? Cell(found, cells) : "";

    private static string Cell(ColumnBinding binding, IReadOnlyList<string> cells) =>
        binding.Index < cells.Count ? cells[binding.Index].Trim() : "";
}
