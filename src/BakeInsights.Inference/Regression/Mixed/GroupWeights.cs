namespace BakeInsights.Inference;

/// <summary>
/// One group's B = (I + R P R')^-1, R'B and N = R'B R, for the group's triangle R and the relative covariance P.
/// </summary>
internal readonly record struct GroupWeights(
    double B00, double B01, double B11,
    double Rb00, double Rb01, double Rb10, double Rb11,
    double N00, double N01, double N11,
    double LogDeterminant)
{
    /// <summary>The weights of a group.</summary>
    /// <param name="triangle">R: its first row, then the last of its second row.</param>
    /// <param name="factor">The factor of P.</param>
    public static GroupWeights Of(ReadOnlySpan<double> triangle, RelativeFactor factor)
    {
        var (r00, r01, r11) = (triangle[0], triangle[1], triangle[2]);

        // K = R L, so that I + K K' is a sum of squares.
        var (k00, k01) = ((r00 * factor.A) + (r01 * factor.B), r01 * factor.C);
        var (k10, k11) = (r11 * factor.B, r11 * factor.C);
        var g00 = 1 + (k00 * k00) + (k01 * k01);
        var g01 = (k00 * k10) + (k01 * k11);
        var g11 = 1 + (k10 * k10) + (k11 * k11);

        // |I + K K'| = 1 + |K|^2 + det(K)^2, without cancellation.
        var cross = (k00 * k11) - (k01 * k10);
        var determinant = g00 + (k10 * k10) + (k11 * k11) + (cross * cross);
        var (b00, b01, b11) = (g11 / determinant, -g01 / determinant, g00 / determinant);
        var (rb00, rb01) = (r00 * b00, r00 * b01);
        var (rb10, rb11) = ((r01 * b00) + (r11 * b01), (r01 * b01) + (r11 * b11));
        return new GroupWeights(
            b00, b01, b11, rb00, rb01, rb10, rb11,
            rb00 * r00, (rb00 * r01) + (rb01 * r11), (rb10 * r01) + (rb11 * r11),
            Math.Log(determinant));
    }

    /// <summary>Adds the derivatives of log |I + R P R'| by the elements of P.</summary>
    public void AddLogDerivatives(double[] change, double[,] bend)
    {
        change[0] += N00;
        bend[0, 0] -= N00 * N00;
        if (change.Length == 1)
        {
            return;
        }

        change[1] += 2 * N01;
        change[2] += N11;
        bend[2, 2] -= N11 * N11;
        bend[1, 1] -= 2 * ((N01 * N01) + (N00 * N11));
        Add(bend, 0, 1, -2 * N00 * N01);
        Add(bend, 0, 2, -N01 * N01);
        Add(bend, 1, 2, -2 * N01 * N11);
    }

    private static void Add(double[,] bend, int k, int l, double value)
    {
        bend[k, l] += value;
        bend[l, k] += value;
    }
}
