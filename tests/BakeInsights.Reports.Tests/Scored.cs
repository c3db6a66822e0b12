using BakeInsights.TestKit;

namespace BakeInsights.Reports.Tests;

/// <summary>An invented journal with three judges, read from files as any other.</summary>
internal static class Scored
{
    /// <summary>The journal.</summary>
    public static Journal Journal { get; } = Make();

    /// <summary>What it says.</summary>
    public static ScoreAnswers Answers { get; } = ScoreAnswers.Of(Journal);

    private static Journal Make()
    {
        using var folder = new TemporaryFolder();
        List<string> bakes = ["bake_id,baked_on,flour_g,water_g,dough_temp_c,proof_min,crust_score"];
        List<string> scores = ["bake_id,loaf,judge,attribute,score"];
        for (var i = 0; i < 24; i++)
        {
            var (water, celsius, proof) = (600 + (10 * (i * 5 % 13)), 21 + (i * 7 % 8), 35 + (5 * (i * 4 % 7)));
            bakes.Add($"K{i + 1},2026-10-{i + 1:00},1000,{water},{celsius},{proof},{1 + (i * 11 % 5)}");
            string[] judges = ["Ash", "Bo", "<i>Cy</i>"];
            for (var judge = 0; judge < 3; judge++)
            {
                var noise = (((i * (7 + (2 * judge))) + judge) % 5) - 2;
                if (judge < 2 || i % 2 == 0)
                {
                    scores.Add(Line(i, judges[judge], "flavour", 5.5 + (0.6 * ((i * 17 % 9) - 4)) + (0.4 * noise) + judge, 10));
                    scores.Add(Line(i, judges[judge], "openness", 6 + ((water - 660) / 35.0) + (0.25 * ((i * 13 % 7) - 3)) + (0.3 * noise) - (0.4 * judge), 9));
                    scores.Add(Line(i, judges[judge], "aroma", 3 + (0.9 * ((((i + (5 * judge)) * (3 + judge)) % 5) - 2)), 5));
                }
            }
        }

        folder.Write("bakes.csv", string.Join('\n', bakes) + "\n");
        folder.Write("scores.csv", string.Join('\n', scores) + "\n");
        folder.Write("attributes.csv", "attribute,low,high,kind\nflavour,1,10,more_is_better\nopenness,1,9,middle_is_best\naroma,1,5,\n");
        return BakeInsights.Journal.Read(folder.Path);
    }

    private static string Line(int bake, string judge, string attribute, double value, double highest) =>
        string.Create(System.Globalization.CultureInfo.InvariantCulture, $"K{bake + 1},,{judge},{attribute},{Math.Clamp(Math.Round(value), 1, highest)}");
}
