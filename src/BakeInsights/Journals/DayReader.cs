namespace BakeInsights;

/// <summary>Reads the days of one file that are not in the plain form.</summary>
internal sealed class DayReader
{
    private readonly FileConventions _conventions;
    private bool _isOrderSaid;

    /// <summary>Makes a reader of the days of one file.</summary>
    public DayReader(FileConventions conventions) => _conventions = conventions;

    /// <summary>Takes the day of a row; where there is none, says why and refuses the row.</summary>
    public bool Read(ColumnBinding binding, string text, RowValues row, NoticeLog notices)
    {
        var at = new SourceLine(row.File, row.Line);
        var written = WrittenDay.Parse(text);
        var order = written.IsEither ? _conventions.DayOrder : DayOrder.NotShown;
        if (written.IsEither && order is DayOrder.NotShown or DayOrder.Both)
        {
            notices.Add(Notices.DateEither(at, binding.Header, text, written));
            return false;
        }

        if ((order == DayOrder.MonthFirst ? written.MonthFirst : written.DayFirst ?? written.MonthFirst) is not { } day)
        {
            notices.Add(written.IsYearShort ? Notices.DateYearShort(at, binding.Header, text) : Notices.DateUnread(at, text));
            return false;
        }

        if (written.IsEither && !_isOrderSaid)
        {
            notices.Add(Notices.DateOrder(at, binding.Header, text, order));
            _isOrderSaid = true;
        }

        row.Day = day;
        return true;
    }
}
