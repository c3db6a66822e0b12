using C = BakeInsights.BakeColumns;

namespace BakeInsights;

/// <summary>Loaves against their dough and their own volume.</summary>
internal sealed class LoafChecks(RowRemarks remarks)
{
    public void Check(RowValues row)
    {
        var values = row.Quantities;
        var loaf = values[C.Loaf.Index];
        if (double.IsNaN(loaf))
        {
            return;
        }

        CheckVolume(row, values[C.LoafVolume.Index], loaf);
        var count = values[C.LoafCount.Index];
        var loaves = loaf * (double.IsNaN(count) ? 1 : count);
        var dough = values[C.Dough.Index];
        if (loaves > dough)
        {
            var cell = remarks.Cell(row, C.Dough);
            remarks.Refuse(row, C.Dough, Notices.LoavesHeavier(cell.At, cell.Header, cell.Text, loaves, dough));
        }
        else if (!double.IsNaN(count))
        {
            CheckLoss(row, 100 * (dough - loaves) / dough);
        }
    }

    private void CheckVolume(RowValues row, double volume, double loaf)
    {
        var range = UsualRanges.SpecificVolume;
        var ratio = volume / loaf;
        if (ratio < range.Low && DecimalSlip.Of(ratio, range.UsualLow, range.UsualHigh) is null)
        {
            var cell = remarks.Cell(row, C.LoafVolume);
            remarks.Refuse(row, C.LoafVolume, Notices.LoafTooSmall(cell.At, cell.Header, cell.Text, ratio));
            return;
        }

        remarks.Check(row, range, ratio);
    }

    // A difference of two weights: no moved point can be read from it.
    private void CheckLoss(RowValues row, double loss)
    {
        if (loss > UsualRanges.BakeLoss.High)
        {
            var cell = remarks.Cell(row, C.Dough);
            remarks.Refuse(row, C.Dough, Notices.RatioImpossible(cell.At, cell.Header, cell.Text, UsualRanges.BakeLoss, loss));
            return;
        }

        remarks.Check(row, UsualRanges.BakeLoss, loss);
    }
}
