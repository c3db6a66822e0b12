using System.Text;
using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.Cli.Tests;

/// <summary><c>add</c> on a terminal, its answers written beforehand.</summary>
public sealed class AddDialogTests : IDisposable
{
    private const string Header = "bake_id,baked_on,baker,flour_g,dough_temp_c,press_test,shelf,notes\n";
    private const string First = "ML-46,2026-10-31,Dov,1000,24.4,keeps_dent,left,burnt\n";

    private static readonly DateOnly Today = new(2026, 11, 3);

    private readonly TemporaryFolder _folder = new();
    private readonly string _file;

    public AddDialogTests() => _file = _folder.Write("bakes.csv", Header + First);

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Enter_takes_what_is_set_alike_and_leaves_empty_what_is_measured()
    {
        var talk = new Script("", "", "", "", "", "", "", "", "yes");

        Assert.Equal("ML-47", Run(talk)?.Id);
        Assert.Equal(Header + First + "ML-47,2026-11-03,Dov,1000,,,,\n", File.ReadAllText(_file));
        Assert.Equal(
            """
            A bake for bakes.csv. Enter takes what stands in [ ], - leaves a field empty. A
            cell may carry its own unit (76F, 19 oz). Nothing is written before you say yes.
            bake_id: the bake's own name, once in the journal
            [ML-47] > 
            baked_on: day of the bake, as 2026-10-31
            [2026-11-03] > 
            baker: who baked
            [Dov] > 
            flour_g: flour, without that of a preferment, in g
            [1000] > 
            dough_temp_c: temperature of the dough when mixing ends, in °C; last time 24.4
            °C
            > 
            press_test: what a dent in the dough did (springs_back, slow_return, keeps_dent,
            collapses); last time keeps_dent
            > 
            shelf: a column of your own; last time left
            > 
            notes: anything else
            > 

            A bake for bakes.csv, as it will be written and as it is understood:
            Field     Written     Understood
            --------  ----------  ----------
            bake_id   ML-47       ML-47
            baked_on  2026-11-03  2026-11-03
            baker     Dov         Dov
            flour_g   1000        1000 g

            Add it? yes, no, or the name of a field to change > yes

            """,
            talk.Screen);
    }

    [Fact]
    public void No_line_is_wider_than_a_terminal() => Assert.All(
        Played("x", "2026-11-04", "Mirre", "1 kg", "76F", "bouncy", "collapses", "right", "fine", "no").Screen.Split('\n'),
        line => Assert.InRange(line.Length, 0, 80));

    [Fact]
    public void A_cell_that_is_not_understood_is_asked_again()
    {
        var talk = Played("ML-46", "", "soon", "-", "2026-11-02", "", "", "warm", "76", "25", "", "", "", "yes");

        Assert.Contains(
            """
            [ML-47] > ML-46
            bake_id, 'ML-46': This bake_id is already that of bakes.csv, line 2; the first
            stays. Give each bake a bake_id of its own, or delete the copy.
            [ML-47] > 
            """,
            talk.Screen,
            StringComparison.Ordinal);
        Assert.Contains("baked_on, 'soon': This is not a day of the calendar.", talk.Screen, StringComparison.Ordinal);
        Assert.Contains("baked_on, '-': The bake has no day.", talk.Screen, StringComparison.Ordinal);
        Assert.Contains("dough_temp_c, 'warm': This is not a number", talk.Screen, StringComparison.Ordinal);
        Assert.Contains("dough_temp_c, '76': 76 °C is outside 0 to 50 °C", talk.Screen, StringComparison.Ordinal);
        Assert.EndsWith("ML-47,2026-11-02,Dov,1000,25,,,\n", File.ReadAllText(_file), StringComparison.Ordinal);
    }

    [Fact]
    public void Us_units_are_asked_offered_and_turned_into_the_files()
    {
        var talk = new Script("", "", "", "", "77", "", "", "", "yes");
        Run(talk, UnitSystem.Us);

        Assert.Contains("flour_g: flour, without that of a preferment, in oz\n[35.27 oz] > \n", talk.Screen, StringComparison.Ordinal);
        Assert.Contains("in °F; last time", talk.Screen, StringComparison.Ordinal);
        Assert.Contains("dough_temp_c  25          77 °F", talk.Screen, StringComparison.Ordinal);
        Assert.EndsWith("ML-47,2026-11-03,Dov,1000,25,,,\n", File.ReadAllText(_file), StringComparison.Ordinal);
    }

    [Fact]
    public void A_field_can_be_changed_before_the_bake_is_added()
    {
        var talk = Played("", "", "", "", "", "", "", "", "flower_g", "flour", "12OO", "1200", "", "YES");

        Assert.Contains(
            "There is no field flower_g: it has flour_g, baker,", talk.Screen, StringComparison.Ordinal);
        Assert.EndsWith("ML-47,2026-11-03,Dov,1200,,,,\n", File.ReadAllText(_file), StringComparison.Ordinal);
    }

    [Fact]
    public void No_adds_nothing()
    {
        Assert.Null(Run(new Script("", "", "", "", "", "", "", "", "n")));
        Assert.Equal(Header + First, File.ReadAllText(_file));
    }

    [Fact]
    public void Answers_that_end_early_add_nothing()
    {
        Assert.Throws<OperationCanceledException>(() => Run(new Script("", "", "")));
        Assert.Equal(Header + First, File.ReadAllText(_file));
    }

    [Fact]
    public void A_bake_that_could_not_be_added_is_not_lost()
    {
        var talk = new Script("x", "", "", "", "", "", "", "", "yes", "bake_id", "y", "yes");
        var bake = new AddDialog(talk, BakeForm.Open(_file), null, Today).Run(entry =>
        {
            if (entry.Id == "x")
            {
                throw new JournalFileException(_file, "The bake_id x is already that of bakes.csv, line 3.", "Give another, or none.");
            }

            return BakeAppender.Append(entry, CancellationToken.None);
        });

        Assert.Equal("y", bake?.Id);
        Assert.Contains("The bake_id x is already that of bakes.csv, line 3. Give another, or none.\n", talk.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void First_bake_of_a_journal_is_asked_without_a_bake_before()
    {
        _folder.Write("bakes.csv", Header);
        var talk = new Script("", "", "", "", "", "", "", "", "yes");

        Assert.Equal("bakes:2", Run(talk)?.Id);
        Assert.DoesNotContain("last time", talk.Screen, StringComparison.Ordinal);
        Assert.Equal(Header + ",2026-11-03,,,,,,\n", File.ReadAllText(_file));
    }

    private Script Played(params string[] answers)
    {
        var talk = new Script(answers);
        Run(talk);
        return talk;
    }

    private Bake? Run(Script talk, UnitSystem? units = null) => new AddDialog(talk, BakeForm.Open(_file), units, Today)
        .Run(entry => BakeAppender.Append(entry, CancellationToken.None));

    private sealed class Script(params string[] answers) : IConversation
    {
        private readonly StringBuilder _screen = new();
        private int _next;

        public string Screen => _screen.ToString();

        public void Say(string text) => _screen.Append(text);

        public string? Ask(string prompt)
        {
            var answer = _next < answers.Length ? answers[_next++] : null;
            _screen.Append(prompt).Append(answer).Append('\n');
            return answer;
        }
    }
}
