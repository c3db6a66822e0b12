namespace BakeInsights;

/// <summary>Days as people write them.</summary>
internal static class DayText
{
    private const int IsoLength = 10;

    /// <summary>Reads a day as 2026-10-31, from the bytes of the file.</summary>
    public static bool TryIso(ReadOnlySpan<byte> bytes, out DateOnly day)
    {
        day = default;
        if (bytes.Length != IsoLength
            || bytes[4] != '-'
            || bytes[7] != '-'
            || !TryDigits(bytes[..4], out var year)
            || !TryDigits(bytes[5..7], out var month)
            || !TryDigits(bytes[8..], out var dayOfMonth))
        {
            return false;
        }

        return TryMake(year, month, dayOfMonth, out day);
    }

    internal static bool TryMake(int year, int month, int dayOfMonth, out DateOnly day)
    {
        var isDay = year >= 1 && month is >= 1 and <= 12 && dayOfMonth >= 1 && dayOfMonth <= DateTime.DaysInMonth(year, month);
        day = isDay ? new DateOnly(year, month, dayOfMonth) : default;
        return isDay;
    }

    private static bool TryDigits(ReadOnlySpan<byte> bytes, out int number)
    {
        number = 0;
        foreach (var octet in bytes)
        {
            if (!char.IsAsciiDigit((char)octet))
            {
                return false;
            }

            number = (number * 10) + (octet - '0');
        }

        return true;
    }
}
