using System.Text;
using BakeInsights.TestKit;
using CsCheck;
using Xunit;

namespace BakeInsights.Tests;

/// <summary>Damage to journals in other forms than the plain one, and to the files beside the bakes.</summary>
public class DamagedFormTests
{
    private static readonly long Many = Damage.Files(1_000);

    private const string Bakes = """
        bake_id;baked_on;flour_g;water_g;yeast_tsp;yeast_kind;dough_temp_c;mixed_at;ready_at;rise_h;notes
        a;31/10/2026;1.250,5;1 lb 3 oz;2 ¼;instant;24,5 °C;19:40;1:10;;fine
        b;03/04/2026;1,250;;½;fresh;24.5;7 pm;8 pm;1:15;"dark; crisp"
        c;10/31/2026;540 g;350 ml;;;76F;;;1 h 20;été
        c;31.10.26;1.250;;;;;;;;

        """;

    private static readonly (string Name, string Text)[] Others =
    [
        ("loaves.csv", "bake_id;loaf;loaf_g;loaf_volume_ml\na;1;800,5;2600\na;2;;2700\na;2;1;\nz;1;800;\n"),
        ("attributes.csv", "attribute,low,high,kind\ncrumb,1,9,more_is_better\ncrust,9,1,\n"),
        ("scores.csv", "bake_id,loaf,judge,attribute,score\na,1,x,crumb,7\na,1,y,crumb,99\nb,,,crust,\n"),
        ("rise.csv", "bake_id,stage,minutes,height_mm\na,rise,30,60\na,rise,0:30,61\nb,proof,1 h,\n"),
        ("probe.csv", "bake_id\tminutes\tplace\ttemp_c\na\t30\tcrumb\t93,5\n"),
        ("cups.csv", "measurer,ingredient,method,cup,mass_g\nx,flour,scooped,red,141\n"),
        ("formulas.csv", "formula,ingredient,percent,amount\nhouse,water,65,\nhouse,honey,,1 oz\n"),
    ];

    private static readonly Gen<Encoding> Encodings =
        Gen.OneOf(new UTF8Encoding(false), Encoding.Unicode, Encoding.BigEndianUnicode, FileEncoding.Windows1252);

    [Fact]
    public void Damaged_file_in_another_form_is_read_or_refused_with_a_reason() =>
        Gen.Select(Damage.Any, Encodings).Sample((damages, encoding) =>
        {
            try
            {
                var journal = Csv.ReadBytes(Damage.Apply(damages, encoding.GetBytes(Bakes)), ClockSpanTests.Zone);
                Accounted(journal);
            }
            catch (JournalFileException refused)
            {
                Assert.NotEmpty(refused.Remedy);
            }
        }, iter: Many);

    [Fact]
    public void Damaged_files_beside_the_bakes_cost_only_their_rows() =>
        Gen.Select(Damage.Any, Gen.Int[0, Others.Length - 1], Encodings).Sample((damages, place, encoding) =>
        {
            using var folder = new TemporaryFolder();
            folder.Write("bakes.csv", "bake_id,baked_on\na,2026-10-01\nb,2026-10-02\n");
            foreach (var (name, text) in Others)
            {
                folder.Write(name, text);
            }

            var damaged = Others[place];
            File.WriteAllBytes(folder.File(damaged.Name), Damage.Apply(damages, encoding.GetBytes(damaged.Text)));

            var journal = Journal.Read(folder.Path);

            Assert.Equal(2, journal.Bakes.Count);
            Accounted(journal);
        }, iter: Many);

    private static void Accounted(Journal journal)
    {
        Assert.Equal(journal.SetAside, journal.Files.Where(file => file.Kind == JournalFileKind.Bakes).Sum(file => file.SetAside));
        Assert.All(journal.Files, file => Assert.Equal(
            file.SetAside, journal.Notices.Count(notice => notice.File == file.Name && notice.Gravity == Gravity.Refused)));
        Assert.All(journal.Loaves, loaf => Assert.Contains(journal.Bakes, bake => bake.Id == loaf.BakeId));
    }
}
