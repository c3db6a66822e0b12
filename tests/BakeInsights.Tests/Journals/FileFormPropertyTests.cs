using System.Globalization;
using System.Text;
using System.Text.Unicode;
using CsCheck;
using Xunit;

namespace BakeInsights.Tests;

/// <summary>The same bakes in other forms of file are the same bakes.</summary>
public class FileFormPropertyTests
{
    private static readonly UTF8Encoding Marked = new(encoderShouldEmitUTF8Identifier: true);

    private static readonly Gen<(Encoding Encoding, bool HasMark)> Encodings = Gen.OneOf(
        ((Encoding)new UTF8Encoding(false), false), (Marked, true), (Encoding.Unicode, true), (Encoding.Unicode, false),
        (Encoding.BigEndianUnicode, true), (Encoding.BigEndianUnicode, false), (FileEncoding.Windows1252, false));

    // Letters that Windows-1252 has, and signs that mean something in a file.
    private static readonly Gen<string> Word = Gen.OneOf("a", "Z", "7", "\"", ",", ";", "\t", "|", " ", ".", "é", "ß", "°", "–", "€")
        .Array[1, 10].Select(pieces => "n" + string.Concat(pieces) + "n");

    // One decimal or two: the mark shows itself.
    private static readonly Gen<double> Amount = Gen.Select(Gen.Int[1_000, 99_999], Gen.OneOf(10.0, 100.0), (parts, size) => parts / size);

    private static readonly Gen<(DateOnly Day, double Flour, double Temp, string Note)[]> Rows =
        Gen.Select(Gen.DateOnly[new(1950, 1, 1), new(2050, 1, 1)], Amount, Gen.Int[1, 499].Select(tenths => tenths / 10.0), Word).Array[1, 8];

    [Fact]
    public void Separator_decimal_mark_and_encoding_do_not_change_the_bakes() =>
        Gen.Select(Rows, Gen.OneOf(',', ';', '\t', '|'), Gen.Bool, Encodings, Gen.Bool).Sample((rows, separator, hasComma, encoding, hasHint) =>
        {
            var plain = Csv.ReadText(Table(rows, ',', hasComma: false));
            var text = (hasHint ? $"sep={separator}\n" : "") + Table(rows, separator, hasComma);
            var bytes = encoding.Encoding.GetBytes(text);
            if (encoding.Encoding == FileEncoding.Windows1252 && Utf8.IsValid(bytes))
            {
                // Once in thousands of files the bytes are letters of UTF-8 too, and nobody could tell.
                return;
            }

            var journal = Csv.ReadBytes(encoding.HasMark ? [.. encoding.Encoding.GetPreamble(), .. bytes] : bytes);

            Assert.Equal(rows.Length, journal.Bakes.Count);
            Assert.Equal(Csv.Canonical(plain.Bakes), Csv.Canonical(journal.Bakes));
            Assert.Equal(rows.Select(row => row.Flour), journal.Bakes.Select(bake => bake[BakeColumns.Flour]!.Value));

            // Beside its form, nothing is remarked that is not remarked of the plain file too: unusual values, say.
            Assert.Equal(
                plain.Notices.Select(notice => (notice.Code, notice.Message)),
                journal.Notices.Where(notice => notice.Code != "FILE_FORM").Select(notice => (notice.Code, notice.Message)));
        }, iter: 500);

    [Fact]
    public void Days_are_the_same_in_every_form_that_the_file_decides() =>
        Gen.Select(
            Gen.DateOnly[new(1900, 1, 1), new(2099, 12, 31)].Array[1, 20],
            Gen.OneOf("yyyy-MM-dd", "yyyy/MM/dd", "yyyy.MM.dd", "yyyyMMdd", "yyyy-M-d", "dd/MM/yyyy", "MM/dd/yyyy", "dd.MM.yyyy", "d.M.yyyy", "M-d-yyyy", "dd-MM-yyyy"),
            Gen.Bool).Sample((days, form, isQuoted) =>
        {
            var written = days.Select(day => day.ToString(form, CultureInfo.InvariantCulture)).ToList();
            var quote = isQuoted ? "\"" : "";

            var journal = Csv.Read(["baked_on", .. written.Select(day => quote + day + quote)]);

            // Day and month are told apart by one day past the twelfth; a day such as 5 May is the same either way.
            var isDecided = form.StartsWith('y') || days.Any(day => day.Day > 12);
            Assert.Equal(days.Where(day => isDecided || day.Day == day.Month), journal.Bakes.Select(bake => bake.BakedOn));
            Assert.Equal(journal.SetAside, journal.Notices.Count(notice => notice.Code == "DATE_EITHER"));
        }, iter: 500);

    private static string Table((DateOnly Day, double Flour, double Temp, string Note)[] rows, char separator, bool hasComma)
    {
        var text = new StringBuilder($"bake_id{separator}baked_on{separator}flour_g{separator}dough_temp_c{separator}notes\n");
        foreach (var (place, (day, flour, temp, note)) in rows.Index())
        {
            string[] cells = [$"b{place}", day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), Number(flour, hasComma), Number(temp, hasComma), note];
            text.AppendJoin(separator, cells.Select(cell => "\"" + cell.Replace("\"", "\"\"", StringComparison.Ordinal) + "\"")).Append('\n');
        }

        return text.ToString();
    }

    private static string Number(double value, bool hasComma)
    {
        var text = value.ToString("R", CultureInfo.InvariantCulture);
        return hasComma ? text.Replace('.', ',') : text;
    }
}
