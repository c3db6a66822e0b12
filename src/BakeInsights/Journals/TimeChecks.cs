using C = BakeInsights.BakeColumns;

namespace BakeInsights;

/// <summary>Times of a row against each other.</summary>
internal sealed class TimeChecks(RowRemarks remarks)
{
    private const double Day = 1_440;

    // A rise noted by the clock and one noted in minutes may be rounded apart by as much. Our own choice.
    private const double SlackMin = 60;

    // Where the rise is colder than this, hours are no sign of a slip (common practice).
    private const double CoolC = 20;

    public void Check(RowValues row)
    {
        var values = row.Quantities;
        var rise = values[C.Rise.Index];
        var isWarm = !(values[C.Cold.Index] > 0 || values[C.RiseTemp.Index] < CoolC);
        if (isWarm && rise > UsualRanges.LongestWarmRiseMin && rise <= UsualRanges.OfRise.High)
        {
            var cell = remarks.Cell(row, C.Rise);
            remarks.Add(Notices.RiseLong(cell.At, cell.Header, cell.Text, rise));
        }

        var isStopped = row.Choices[C.RiseOutcome.Index] == (int)RiseOutcome.Stopped;
        CheckLooks(row, C.RiseNotReady, C.Rise, isStopped);
        CheckLooks(row, C.ProofNotReady, C.Proof, isStopped: false);
        CheckClock(row, rise, isWarm);
    }

    private void CheckLooks(RowValues row, QuantityColumn notReadyColumn, QuantityColumn readyColumn, bool isStopped)
    {
        var values = row.Quantities;
        var notReady = values[notReadyColumn.Index];
        var ready = values[readyColumn.Index];
        if (notReady > ready || (notReady == ready && !isStopped))
        {
            var cell = remarks.Cell(row, notReadyColumn);
            remarks.Refuse(row, notReadyColumn, Notices.LooksSwapped(cell.At, cell.Header, cell.Text, notReady, ready));
        }
        else if (ready - notReady > UsualRanges.WidestGap * ready && !isStopped)
        {
            var cell = remarks.Cell(row, notReadyColumn);
            remarks.Add(Notices.LooksFarApart(cell.At, cell.Header, cell.Text, notReady, ready, (ready - notReady) / ready));
        }
    }

    // Past midnight is no fault by itself: it is one when the rise can't have taken until the next day.
    private void CheckClock(RowValues row, double rise, bool isWarm)
    {
        var mixed = row.Quantities[C.MixedAt.Index];
        var ready = row.Quantities[C.ReadyAt.Index];
        if (!(ready < mixed))
        {
            return;
        }

        var span = ready + Day - mixed;
        if (double.IsNaN(rise) ? isWarm && span > UsualRanges.LongestWarmRiseMin : span > rise + SlackMin)
        {
            var cell = remarks.Cell(row, C.ReadyAt);
            remarks.Add(Notices.ReadyBeforeMixed(cell.At, cell.Header, cell.Text, span));
        }
    }
}
