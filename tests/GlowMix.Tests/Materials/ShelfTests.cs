using GlowMix.Documents;
using GlowMix.Materials;

namespace GlowMix.Tests.Materials;

public class ShelfTests
{
    private static readonly string Mask = InMemoryMaterials.Shipped("data/boards/black-mask.yaml");

    [Fact]
    public void A_material_of_the_users_own_comes_before_a_shipped_one_of_that_name()
    {
        string own = Mask.Replace("Black solder mask", "Soot", StringComparison.Ordinal);
        var shelf = new Shelf(new InMemoryMaterials(("materials/boards/white-mask.yaml", own)));
        var board = shelf.Board("white-mask").Material!;
        Assert.Equal("Soot", board.Title);
        Assert.Equal(
            new MaterialOrigin("materials/boards/white-mask.yaml", IsShipped: false, own),
            board.Origin
        );
    }

    [Fact]
    public void A_path_is_read_as_a_path()
    {
        var shelf = new Shelf(new InMemoryMaterials(("../mine/soot.yaml", Mask)));
        Assert.Equal("Black solder mask", shelf.Board("../mine/soot.yaml").Material!.Title);
    }

    [Fact]
    public void A_path_without_a_file_keeps_the_reason()
    {
        var loaded = new Shelf(new InMemoryMaterials()).Board("missing.yaml");
        Assert.Null(loaded.Material);
        var problem = Assert.Single(loaded.Problems);
        Assert.Equal(ProblemKind.FileAccess, problem.Kind);
        Assert.Equal("missing.yaml: no such file", problem.ToString());
    }

    [Fact]
    public void A_path_on_a_shelf_without_files_is_told()
    {
        var loaded = new Shelf().Board("soot.yaml");
        Assert.Equal(MaterialProblemTexts.NoFiles("soot.yaml"), loaded.NotFound);
    }

    [Fact]
    public void A_name_with_a_slip_gets_the_nearest_one()
    {
        var loaded = new Shelf().Resin("epoxy-clear-slwo");
        Assert.Null(loaded.Material);
        Assert.Empty(loaded.Problems);
        Assert.Equal(
            "no resin 'epoxy-clear-slwo' in materials/resins or on the shelf; did you mean 'epoxy-clear-slow'?",
            loaded.NotFound
        );
    }

    [Fact]
    public void A_name_like_none_gets_the_whole_list() =>
        Assert.EndsWith(
            "there are bare-metal, black-mask, green-mask, white-mask",
            new Shelf().Board("kryptonite").NotFound,
            StringComparison.Ordinal
        );

    [Theory]
    [InlineData("")]
    [InlineData("../cie/cie1931_2deg")]
    [InlineData("white-mask.yml")]
    public void A_name_that_is_none_is_not_found(string name) =>
        Assert.NotNull(new Shelf().Board(name).NotFound);

    [Fact]
    public void Names_are_the_users_and_the_shipped_each_once()
    {
        var shelf = new Shelf(
            new InMemoryMaterials(
                ("materials/boards/soot.yaml", Mask),
                ("materials/boards/black-mask.yaml", Mask)
            )
        );
        Assert.Equal(
            ["bare-metal", "black-mask", "green-mask", "soot", "white-mask"],
            shelf.Names(MaterialKind.Board)
        );
    }

    [Fact]
    public void A_material_is_read_once()
    {
        var shelf = new Shelf();
        Assert.Same(shelf.Pigment("green-aluminate"), shelf.Pigment("green-aluminate"));
    }

    [Fact]
    public void Threads_that_ask_at_once_get_the_same_material()
    {
        var shelf = new Shelf();
        var found = new Loaded<Pigment>[16];
        Parallel.For(0, found.Length, i => found[i] = shelf.Pigment("green-aluminate-class-c"));
        Assert.All(found, loaded => Assert.Same(found[0], loaded));
    }

    [Fact]
    public void All_shipped_LEDs_can_be_leant_on() => Assert.Equal(4, new Shelf().ShippedLeds().Length);
}
