import type { Names } from '../../engine/names.ts';

/**
 * Common garden plants, a row each: common names, the first of them the one that is shown | botanical name | kind | water-use class by
 * region | spread when grown, ft | what its figures come from where that is not the usual.
 *
 * Kind: T tree, S shrub, P perennial, C ground cover, F fern, G grass, H herb, V vine, B bulb, A annual, U succulent, I indoors or in a pot.
 *
 * Class: one letter a region of WUCOLS IV (V very low, L low, M moderate, H high, ? not assessed, / not fit for the region), in the
 * order North-Central Coastal, Central Valley, South Coastal, South Inland, High and Intermediate Desert, Low Desert. Copied from the
 * public data of the plant search database of WUCOLS IV (University of California, Davis; repository
 * ucdavis/WUCOLS-plant-search-database, file WUCOLS-compressed.json, field `wubr`). Of a species with several entries the one that
 * gardens mostly grow. A single letter after `=` holds for no region and comes from memory.
 *
 * Spread: from memory; with `w`, from the text of the same database (field `ci`).
 */
export const PLANT_ROWS: Names = {
  en: `
Japanese maple;laceleaf maple|Acer palmatum|T|MMMH//|10-20
red maple;swamp maple|Acer rubrum|T|MMHH//|30-45
silver maple|Acer saccharinum|T|MMHH//|40-60
sugar maple;rock maple|Acer saccharum|T|M/////|40-50
Norway maple|Acer platanoides|T|MMMH//|30-50
vine maple|Acer circinatum|T|MHH/?/|10-20
trident maple|Acer buergerianum|T|MMM/?/|20-25
paperbark maple|Acer griseum|T|MM????|15-25
alder;black alder;common alder|Alnus glutinosa|T|MMMH//|20-40
silk tree;mimosa tree|Albizia julibrissin|T|LLLLMM|20-35
river birch;red birch|Betula nigra|T|HHHH//|40-60
silver birch;European white birch;weeping birch|Betula pendula|T|HHHH//|20-35
hornbeam;European hornbeam|Carpinus betulus|T|MM////|25-40
pecan|Carya illinoensis|T|LMMMMM|40-75
catalpa;bean tree;Indian bean tree|Catalpa bignonioides|T|MMMM??|30-40
Atlas cedar;blue atlas cedar|Cedrus atlantica|T|MMMMMM|30-40
deodar cedar|Cedrus deodara|T|LLLMMM|30-40w
katsura tree|Cercidiphyllum japonicum|T|MMM?//|25-40
eastern redbud|Cercis canadensis|T|MMMM//|20-30
western redbud|Cercis occidentalis|T|VVLLMM|8-12w
Judas tree|Cercis siliquastrum|T|MMM???|15-25
desert willow|Chilopsis linearis|T|VVVLMM|10-20w
Chinese fringe tree|Chionanthus retusus|T|MMMM//|15-25
flowering dogwood;eastern dogwood|Cornus florida|T|MMHH//|15-25
kousa dogwood;Japanese dogwood|Cornus kousa|T|MM////|15-25
hazel;filbert;cobnut|Corylus maxima|T|L/////|10-15
hawthorn;may tree|Crataegus spp.|T|MMMMM/|15-25
Italian cypress|Cupressus sempervirens|T|LMLLMM|8-12w
Leyland cypress|x Cupressocyparis leylandii|T|MMM///|15-25
quince|Cydonia oblonga|T|LLML??|12-15
persimmon;Japanese persimmon;kaki|Diospyros kaki|T|LMMMMM|15-25
loquat|Eriobotrya japonica|T|LLMM/M|15-25
eucalyptus;gum tree;silver dollar gum|Eucalyptus polyanthemos|T|LLLLMM|20-45
beech;European beech|Fagus sylvatica|T|MH////|35-50
fig tree;edible fig|Ficus carica|T|MMMMMM|15-30
white ash|Fraxinus americana|T|MM////|40-60
ginkgo;maidenhair tree|Ginkgo biloba|T|MMMMM?|30-40
honey locust|Gleditsia triacanthos|T|LLMLLL|25-40
jacaranda|Jacaranda mimosifolia|T|MMMM/M|25-40
black walnut|Juglans nigra|T|MMM///|40-60
walnut;English walnut|Juglans regia|T|MMMM//|40-60
golden rain tree|Koelreuteria paniculata|T|MMLLMM|25-35
golden chain tree;laburnum|Laburnum x watereri|T|MM////|10-15
crape myrtle;crepe myrtle|Lagerstroemia spp.|T|LLMMMM|10-20
bay laurel;sweet bay;bay tree|Laurus nobilis|T|LLLLMM|10-20
sweet gum;liquidambar|Liquidambar styraciflua|T|MMMMMM|25-40
tulip tree;tulip poplar;yellow poplar|Liriodendron tulipifera|T|MMMH//|30-40
southern magnolia|Magnolia grandiflora|T|MMMM/H|30-50
star magnolia|Magnolia stellata|S|MMMM//|10-15
saucer magnolia;tulip magnolia|Magnolia x soulangeana|T|MMMM//|15-25
crabapple|Malus hybrids|T|MM/MM/|15-25
dawn redwood|Metasequoia glyptostroboides|T|HHHH//|15-25
white mulberry|Morus alba|T|MMMMMM|30-40
black gum;tupelo;sour gum|Nyssa sylvatica|T|MMMH//|20-30
olive tree|Olea europaea|T|VVLLLL|20-35w
avocado|Persea americana|T|LMMM//|25-35
Norway spruce|Picea abies|T|MMM///|25-30
white spruce;Alberta spruce|Picea glauca|T|MM//M/|10-20
blue spruce;Colorado spruce|Picea pungens|T|MMMMM/|10-20
eastern white pine|Pinus strobus|T|M?//?/|20-40
Scots pine;Scotch pine|Pinus sylvestris|T|MM/M//|30-40
Japanese black pine|Pinus thunbergii|T|MMMMMM|20-25
Chinese pistache|Pistacia chinensis|T|LLMMMM|30-40w
London plane;sycamore;plane tree|Platanus x hispanica|T|MMMMHH|40-60
poplar;Lombardy poplar|Populus nigra 'Italica'|T|MMMMHH|10-15
quaking aspen|Populus tremuloides|T|M/////|20-30
flowering cherry;Japanese cherry;ornamental cherry|Prunus spp. (flowering cherry)|T|MMM///|20-30
flowering plum;purple-leaf plum;cherry plum|Prunus spp. (flowering plum)|T|LMMMMM|15-20
pomegranate|Punica granatum|T|LLLLMM|10-15
Callery pear;ornamental pear;flowering pear|Pyrus calleryana|T|MMMMM/|20-30
coast live oak|Quercus agrifolia|T|VVVL/M|35-50w
white oak|Quercus alba|T|MM????|50-80
pin oak|Quercus palustris|T|MMMM//|25-40
English oak|Quercus robur|T|MMMM?/|40-60
red oak|Quercus rubra|T|MMMM//|45-60
southern live oak|Quercus virginiana|T|MMMMMM|60-80
weeping willow|Salix babylonica|T|HHHHH?|30-40
coast redwood|Sequoia sempervirens|T|HHHH//|20-30
rowan;mountain ash|Sorbus aucuparia|T|/M//M/|15-25
Japanese snowbell|Styrax japonicus|T|MM//M/|20-30
bald cypress|Taxodium distichum|T|MMMM//|20-30
western red cedar;giant arborvitae|Thuja plicata|T|MMMM//|15-25
linden;lime tree;littleleaf linden|Tilia cordata|T|MMM///|30-40
windmill palm|Trachycarpus fortunei|T|LMMLMM|6-10
hemlock;Canadian hemlock|Tsuga canadensis|T|M/////|25-35
Chinese elm;lacebark elm|Ulmus parvifolia|T|LMMLMM|30-50
chaste tree;vitex|Vitex agnus-castus|T|LLLLLL|10-15w
zelkova|Zelkova serrata|T|MMLMMM|40-60
abelia;glossy abelia|Abelia x grandiflora|S|MMMMM/|4-6
flowering maple;abutilon;parlour maple|Abutilon x hybridum|S|MHMM//|4-6
serviceberry;juneberry;saskatoon;shadbush|Amelanchier alnifolia|S|MM?/??|6-10
manzanita|Arctostaphylos densiflora|S|LLLL//|5-7w
strawberry tree|Arbutus unedo|S|LLLLMM|8-20
Powis Castle sagebrush;artemisia|Artemisia 'Powis Castle'|S|LMMLMM|4-6w
aucuba;spotted laurel|Aucuba japonica|S|MMMM/M|5-8
Oregon grape;mahonia|Berberis aquifolium|S|MMMMMM|3-5
Japanese barberry;barberry|Berberis thunbergii|S|MMLMHH|3-6
butterfly bush;buddleia;summer lilac|Buddleja davidii|S|MMMMMM|5-8
boxwood;box;English boxwood|Buxus sempervirens|S|MMM/MM|3-6
Japanese boxwood|Buxus microphylla japonica|S|MMMMMM|3-5
beautyberry|Callicarpa japonica|S|MMMM//|4-6
lemon bottlebrush;bottlebrush|Callistemon citrinus|S|LLLL/M|6-15w
heather;ling|Calluna vulgaris|S|MM////|2-3
Carolina allspice;sweetshrub|Calycanthus floridus|S|MMM???|6-10
camellia|Camellia japonica|S|MMMM/M|6-10
sasanqua camellia|Camellia sasanqua|S|MMMM/M|5-8
bluebeard;blue mist shrub|Caryopteris x clandonensis|S|MMMM//|2-4
California lilac;ceanothus|Ceanothus 'Concha'|S|LLLL//|8-10w
flowering quince;japonica|Chaenomeles cvs.|S|LLMMLM|5-8
false cypress|Chamaecyparis spp.|S|MMH///|4-10
Mexican orange;choisya|Choisya ternata|S|MMMM/M|4-6
rockrose;cistus|Cistus spp.|S|LLLLMM|3-5
red twig dogwood;red osier dogwood|Cornus sericea|S|HHHH//|6-10
smoke bush;smoke tree|Cotinus coggygria|S|LLLLL/|12-15w
cotoneaster|Cotoneaster spp. (shrubs)|S|LLLMMM|5-8
winter daphne;daphne|Daphne odora|S|LLMM//|3-4
shrubby cinquefoil;potentilla|Dasiphora fruticosa|S|MMM/?/|3-4
deutzia|Deutzia spp.|S|MMMM?/|3-6
silverberry;elaeagnus|Elaeagnus pungens|S|LLLLMM|6-12
winter heath;heath|Erica spp.|S|MMM///|2-3
escallonia|Escallonia spp.|S|MMMM//|4-6
burning bush;winged euonymus|Euonymus alatus|S|MM????|6-10
evergreen euonymus|Euonymus japonicus|S|LLMMMM|4-6
euryops;bush daisy|Euryops pectinatus|S|LLLMMM|3-5w
forsythia|Forsythia x intermedia|S|LLMM//|6-10
dwarf fothergilla|Fothergilla gardenii|S|MM?/??|3-4
hardy fuchsia|Fuchsia magellanica|S|MMMH//|3-5
gardenia|Gardenia spp.|S|MMMM/M|3-5
witch hazel|Hamamelis virginiana|S|MM////|10-15
hebe|Hebe spp.|S|MMMM//|3-4
toyon;Christmas berry|Heteromeles arbutifolia|S|LVVLL/|6-10w
Chinese hibiscus;tropical hibiscus|Hibiscus rosa-sinensis|S|MMMMMM|5-8
rose of Sharon;althea;hardy hibiscus|Hibiscus syriacus|S|LMMM//|6-10
hydrangea;bigleaf hydrangea;mophead hydrangea;hortensia|Hydrangea macrophylla|S|MHMH//|4-6
smooth hydrangea;snowball hydrangea|Hydrangea arborescens|S|MH??//|4-6
panicle hydrangea;peegee hydrangea|Hydrangea paniculata|S|MMMM//|6-8
oakleaf hydrangea|Hydrangea quercifolia|S|MMMM//|6-8
St. John's wort;hypericum|Hypericum 'Hidcote'|S|MMMM//|3-5
English holly;holly|Ilex aquifolium|S|LMMMMM|8-15
Japanese holly|Ilex crenata|S|M?MM??|3-5
inkberry|Ilex glabra|S|M?????|5-8
Virginia sweetspire|Itea virginica|S|M?????|3-6
winter jasmine|Jasminum nudiflorum|S|LL????|4-7
juniper|Juniperus spp.|S|LLLMMM|4-8
mountain laurel|Kalmia latifolia|S|M?//??|5-10
Japanese kerria;kerria|Kerria japonica|S|MM?MM?|5-8
beauty bush|Kolkwitzia amabilis|S|LMMMM/|6-10
lantana|Lantana camara|S|LMLLMM|3-5
lavender|Lavandula spp.|S|LLLLM/|2-5w
tree mallow;lavatera|Malva thuringiaca|S|MMMM??|4-6
New Zealand tea tree;manuka|Leptospermum scoparium|S|MMMM//|6-10
Texas ranger;Texas sage;cenizo|Leucophyllum spp.|S|LLLLLL|6-8w
Japanese privet;privet|Ligustrum japonicum|S|MLMMMM|6-8
box honeysuckle|Lonicera nitida|S|LM/M/?|4-6
Chinese fringe flower;loropetalum|Loropetalum chinense|S|LMMM??|4-6
myrtle|Myrtus communis|S|LLLMMM|4-6
heavenly bamboo;nandina|Nandina domestica|S|LLLMMM|3-4
oleander|Nerium oleander|S|LLLLMM|8-12
sweet olive;tea olive;osmanthus|Osmanthus spp.|S|MMMMMM|6-10
Jerusalem sage|Phlomis fruticosa|S|LLLLMM|3-5w
mock orange;philadelphus|Philadelphus x virginalis|S|MMMM//|5-8
red tip photinia;photinia|Photinia x fraseri|S|MMMMMM|8-12
ninebark|Physocarpus opulifolius|S|LM?M??|5-8
lily-of-the-valley shrub;pieris;andromeda|Pieris japonica|S|MM////|5-8
mugo pine;mountain pine|Pinus mugo|S|LL/MM/|20-25w
Japanese pittosporum;pittosporum;tobira|Pittosporum tobira|S|LMMMMM|6-10
cape plumbago;plumbago;leadwort|Plumbago auriculata|S|LMMM/M|6-10
cherry laurel;English laurel|Prunus laurocerasus|S|MMMH//|8-15
firethorn;pyracantha|Pyracantha spp.|S|LLLMMM|8-10
Indian hawthorn|Rhaphiolepis indica|S|LMLMMM|5-6w
azalea|Rhododendron spp. (azalea)|S|MMHH//|3-5
rhododendron|Rhododendron spp.|S|MMHH//|5-8
staghorn sumac;sumac|Rhus typhina|S|LLL?L/|15-20
flowering currant;red-flowering currant|Ribes sanguineum|S|LLLM??|6-12w
rose;bush rose;tea rose;hybrid tea;floribunda|Rosa hybrids (bush)|S|MMMMMM|3-4
rugosa rose;beach rose;Japanese rose|Rosa rugosa|S|LMMMMM|4-6
carpet rose;groundcover rose|Rosa hybrids (ground cover)|C|MMMMMM|3-4
rosemary|Rosmarinus officinalis|S|LLVLMM|3-5
autumn sage;Texas salvia|Salvia greggii|S|LLLLMM|2-3
Mexican bush sage|Salvia leucantha|S|LLLL/M|4-6
elderberry;elder|Sambucus spp.|S|LLLLMM|8-12
lavender cotton;santolina;cotton lavender|Santolina spp.|S|LLLLLL|1-3w
sweet box;sarcococca;Christmas box|Sarcococca confusa|S|LMM?//|3-5
Japanese skimmia;skimmia|Skimmia japonica|S|MM////|3-5
spirea;spiraea;bridal wreath|Spiraea spp.|S|MMMMMM|3-6
snowberry|Symphoricarpos albus|S|LLLL??|3-6
lilac|Syringa vulgaris|S|LM/MM/|8-12
dwarf Korean lilac|Syringa meyeri 'Palibin'|S|MM/???|5-7
English yew;yew|Taxus baccata|S|MMMMM/|8-15
arborvitae;eastern arborvitae;white cedar;thuja|Thuja occidentalis|S|MMMMMM|4-12
germander|Teucrium chamaedrys|S|LLLLMM|1-2
laurustinus;viburnum|Viburnum tinus|S|MMMMMM|5-8
arrowwood|Viburnum dentatum|S|MM????|6-10
cranberry bush;guelder rose;snowball bush|Viburnum opulus|S|LMMM//|8-12
doublefile viburnum;Japanese snowball|Viburnum plicatum|S|MMMM//|8-12
weigela|Weigela florida|S|MMMMM/|5-8
coast rosemary;westringia|Westringia fruticosa|S|LLLL/?|5-10w
Adam's needle;yucca|Yucca filamentosa|S|LMVVL?|2-3
yarrow;achillea;milfoil|Achillea millefolium|P|LLLLLL|2-3w
monkshood;aconite;wolfsbane|Aconitum napellus|P|MM////|1-2
agapanthus;lily of the Nile;African lily|Agapanthus praecox|P|MMMM??|2-3
hummingbird mint;agastache;licorice mint|Agastache rupestris|P|LLMM??|1-2w
bugleweed;ajuga;carpet bugle|Ajuga reptans|C|MMMMMM|1-2
hollyhock|Alcea rosea|P|LLMM//|1-2
lady's mantle|Alchemilla mollis|P|ML////|2-3
Peruvian lily;alstroemeria;lily of the Incas|Alstroemeria spp.|P|MMML?M|2-3
Arkansas blue star;amsonia|Amsonia hubrichtii|P|M?????|3-4
Japanese anemone;windflower|Anemone x hybrida|P|MMMM//|2-3
kangaroo paw|Anigozanthos hybrids|P|LLML//|1-3w
columbine;granny's bonnet;aquilegia|Aquilegia spp.|P|LLLMMM|1-2
rock cress;arabis|Arabis spp.|P|LMM///|1-2
marguerite daisy;marguerite|Argyranthemum frutescens|P|MMMM/M|3-4
thrift;sea pink|Armeria maritima|P|MMMMMM|1-1.5w
wormwood;silver mound|Artemisia spp. (herbaceous)|P|LLLLMM|1-3
goat's beard|Aruncus dioicus|P|M?M/??|3-5
butterfly weed;orange milkweed;milkweed|Asclepias tuberosa|P|MMMMMM|1-2
aster;Michaelmas daisy|Aster spp.|P|MMMM??|2-3
astilbe;false goat's beard|Astilbe hybrids|P|MH////|1-2
aubrieta;purple rock cress|Aubrieta deltoidea|P|LM?/??|1-2
basket of gold;gold dust|Aurinia saxatilis|P|LLMM??|1-2
false indigo;baptisia|Baptisia australis|P|L??/??|3-4
bergenia;pigsqueak;elephant's ears|Bergenia cordifolia|P|MMMM?/|1-2
Siberian bugloss;brunnera|Brunnera macrophylla|P|HHH/??|1-2
bellflower;campanula|Campanula spp.|P|MHMM/?|1-2
red valerian;Jupiter's beard|Centranthus ruber|P|VVLLMM|2-3
snow in summer|Cerastium tomentosum|C|MMMMMM|2-3
plumbago ground cover;dwarf plumbago;hardy plumbago|Ceratostigma plumbaginoides|C|LMMM??|1-2
chrysanthemum;mum;garden mum|Chrysanthemum x morifolium|P|=M|2-3
bugbane;cohosh;black cohosh|Actaea simplex|P|M??/??|2-3
lily of the valley|Convallaria majalis|C|MM////|1-2
coreopsis;tickseed|Coreopsis lanceolata|P|LLLLMM|1-2
threadleaf coreopsis|Coreopsis verticillata|P|LLLLMM|1-2
montbretia;crocosmia|Crocosmia hybrids|P|LLLL/?|1-2
delphinium|Delphinium spp.|P|MMMM//|1-2
pinks;carnation;dianthus;sweet William|Dianthus spp.|P|MMMMM/|1-1.5
twinspur;diascia|Diascia spp.|P|MMMM//|1-2
bleeding heart;Dutchman's breeches|Dicentra spp.|P|MMMH//|2-3
foxglove;digitalis|Digitalis purpurea|P|MHMM//|1-2
purple coneflower;coneflower;echinacea|Echinacea spp.|P|MMMMMM|1.5-2
globe thistle|Echinops exaltatus|P|MMM???|2-3
California fuchsia;hummingbird trumpet|Epilobium spp.|P|LLVLMM|2-4
barrenwort;epimedium;bishop's hat|Epimedium grandiflorum|C|MM////|1-1.5
Mexican daisy;Santa Barbara daisy;fleabane|Erigeron karvinskianus|P|LLLMMM|2-3
blue sea holly;eryngium|Eryngium planum|P|MML???|1-2
wallflower|Erysimum cheiri|P|MMMM??|1-1.5
California poppy|Eschscholzia californica|P|VVVV//|1-1.5
Joe Pye weed;mistflower|Eupatorium spp.|P|MMM?MM|3-4
Mediterranean spurge;euphorbia|Euphorbia characias|P|LLVL??|3-4
blanket flower;gaillardia;Indian blanket|Gaillardia x grandiflora|P|LLLMMM|1-2
sweet woodruff|Galium odoratum|C|MMH/??|1-2
gaura;whirling butterflies;beeblossom|Gaura lindheimeri|P|MMLMMM|2-3
gazania;treasure flower|Gazania spp.|C|MMLMMM|1-1.5
cranesbill;hardy geranium|Geranium spp.|P|MMMMMM|1.5-3
gerbera;Transvaal daisy|Gerbera jamesonii|P|MHMM//|1-1.5
avens;geum|Geum spp.|P|MMMM?/|1-2
baby's breath|Gypsophila paniculata|P|LMMM//|2-3
sneezeweed;helenium;Helen's flower|Helenium hybrids|P|MM?M??|1.5-2
false sunflower;heliopsis;oxeye|Heliopsis helianthoides|P|MM????|2-3
Lenten rose;hellebore;Christmas rose|Helleborus orientalis|P|MMMM//|1.5-2
daylily;day lily|Hemerocallis spp.|P|MMMMMM|2-3
coral bells;heuchera;alumroot|Heuchera sanguinea|P|MMMMMM|1-2
hosta;plantain lily;funkia|Hosta spp.|P|MM////|2-4
candytuft|Iberis sempervirens|P|MMMM//|1-2
bearded iris;German iris;flag iris|Iris germanica|P|LLLMMM|1-2
Japanese iris|Iris ensata|P|HHHH??|1-2
Siberian iris|Iris sibirica|P|MMH/??|1.5-2
red hot poker;torch lily;kniphofia|Kniphofia uvaria|P|LLLLMM|2-3
spotted deadnettle;lamium|Lamium maculatum|C|MMMM??|1-2
Shasta daisy|Leucanthemum x superbum|P|MMMMMM|1.5-2
blazing star;gayfeather;liatris|Liatris spicata|P|MMMMMM|1-1.5
leopard plant;ligularia;ragwort|Ligularia dentata|P|HHHH??|2-3
statice;sea lavender|Limonium perezii|P|LMLM//|2-3
lilyturf;liriope;monkey grass|Liriope spp.|C|MMMMMM|1-1.5
cardinal flower|Lobelia cardinalis|P|HHHH??|1-2
lupine;lupin;Russell lupin|Lupinus Russell hybrids|P|MM////|1-2
rose campion|Lychnis coronaria|P|LLLL??|1-1.5
creeping Jenny;loosestrife;moneywort|Lysimachia spp.|C|HHHH//|1-2
plume poppy|Macleaya spp.|P|MMMM??|3-4
bee balm;bergamot;monarda;Oswego tea|Monarda didyma|P|MMMMMM|2-3
forget-me-not|Myosotis scorpioides|P|MMMM??|1-1.5
catmint;catnip;nepeta|Nepeta spp.|P|LLMMMM|2-3w
Mexican evening primrose;evening primrose|Oenothera speciosa|P|LLLLMM|2-3
African daisy;osteospermum;freeway daisy|Osteospermum spp.|P|LLLL//|2-4
pachysandra;Japanese spurge|Pachysandra terminalis|C|MMM///|1-1.5
peony|Paeonia spp.|P|MM////|2-3
oriental poppy;poppy|Papaver orientale|P|MMMM//|1.5-2
beardtongue;penstemon|Penstemon hybrids|P|MMMMMM|1.5-2
Russian sage;perovskia|Perovskia spp.|P|LLLMLL|1-2w
garden phlox;phlox|Phlox spp.|P|MMMM//|1.5-2
creeping phlox;moss pink;moss phlox|Phlox subulata|C|MM//??|1-2
New Zealand flax|Phormium tenax|P|LLLM//|4-6
obedient plant|Physostegia virginiana|P|MHMM??|2-3
balloon flower|Platycodon grandiflorus|P|MHMM??|1-2
Jacob's ladder|Polemonium spp.|P|HHMM??|1-2
Solomon's seal|Polygonatum odoratum|P|H/M/??|1-2
primrose;primula;cowslip|Primula vulgaris|P|=M|0.5-1
lungwort;pulmonaria|Pulmonaria spp.|P|MH//??|1-2
pasque flower|Pulsatilla vulgaris|P|MM//??|1-1.5
black-eyed Susan;rudbeckia;gloriosa daisy|Rudbeckia spp.|P|MMMM//|1.5-2
meadow sage;perennial salvia;woodland sage|Salvia nemorosa|P|MMMM??|1.5-2
Irish moss|Sagina subulata|C|MMMH//|0.5-1
pincushion flower;scabious;scabiosa|Scabiosa spp.|P|MMMM//|1-1.5
dusty miller;silver ragwort|Senecio cineraria|P|LLLLMM|1-2
goldenrod;solidago|Solidago spp.|P|MMMH??|1.5-2
globe mallow;desert mallow|Sphaeralcea spp.|P|LLLLVV|2-4w
lamb's ears;lamb's ear|Stachys byzantina|C|LLMMM/|1-2
Stokes' aster|Stokesia laevis|P|MMMM??|1-1.5
comfrey|Symphytum azureum|P|M?MM??|2-3
meadow rue;thalictrum|Thalictrum aquilegiifolium|P|H?MM??|2-3
foamflower;tiarella|Tiarella spp.|P|MMMM??|1-1.5
spiderwort;tradescantia|Tradescantia ohiensis|P|MMMM??|1.5-2
toad lily|Tricyrtis hirta|P|MMMM??|1-2
globeflower|Trollius spp.|P|HHMM??|1-2
tall verbena;purpletop vervain|Verbena bonariensis|P|VLLLM?|1-3w
speedwell;veronica|Veronica spp.|P|MMM//M|1-2
periwinkle;vinca;myrtle ground cover|Vinca minor|C|MMMMMM|1.5-3
sweet violet;violet|Viola odorata|P|MMMH??|0.5-1
calla lily;arum lily|Zantedeschia aethiopica|P|MMMM/M|1.5-2
bird of paradise;crane flower|Strelitzia reginae|P|MMMMMM|3-5
maidenhair fern|Adiantum spp.|F|HHHHMM|1-2
lady fern|Athyrium filix-femina|F|MHHM?/|2-3
Japanese painted fern|Athyrium nipponicum|F|MMM/?/|1-1.5
holly fern;Japanese holly fern|Cyrtomium falcatum|F|MMMM??|2-3
autumn fern;wood fern|Dryopteris erythrosora|F|MMMM??|1.5-2
ostrich fern|Matteuccia struthiopteris|F|MMMH??|2-4
cinnamon fern|Osmunda cinnamomea|F|HHHH//|2-3
royal fern|Osmunda regalis|F|HHH?//|3-4
western sword fern;sword fern|Polystichum munitum|F|MMMH??|3-4
blue grama|Bouteloua gracilis|G|LLLLLL|1-1.5
feather reed grass;Karl Foerster grass|Calamagrostis x acutiflora|G|MLMMM?|2-3w
Japanese sedge;sedge;Morrow's sedge|Carex morrowii|G|MMM???|1-2
northern sea oats;sea oats|Chasmanthium latifolium|G|LMMM??|1.5-2.5
pampas grass|Cortaderia selloana|G|VLL/MM|5-8
tufted hair grass|Deschampsia cespitosa|G|LLM/??|1-2
blue fescue|Festuca glauca|G|LLLMMM|0.75-1
Japanese forest grass;hakone grass|Hakonechloa macra|G|MMM???|1.5-2
blue oat grass|Helictotrichon sempervirens|G|LLMM??|2-3w
maiden grass;eulalia;miscanthus;silver grass|Miscanthus sinensis|G|MMMM//|3-5
pink muhly;muhly grass;hairawn muhly|Muhlenbergia capillaris|G|LLMLMM|2-3
deer grass|Muhlenbergia rigens|G|LLLMMM|2-3w
mondo grass;dwarf lilyturf|Ophiopogon japonicus|G|MMMMMM|0.5-1
switchgrass;switch grass|Panicum virgatum|G|MLMMM?|2-3
fountain grass|Pennisetum alopecuroides|G|LLML??|2-3
purple fountain grass|Pennisetum x advena|G|MLLLMM|2-3
bamboo;golden bamboo;running bamboo|Phyllostachys spp.|G|LLMMMM|6-15
little bluestem|Schizachyrium scoparium|G|????L?|1.5-2
moor grass|Sesleria spp.|G|MMMM??|1-1.5
Mexican feather grass|Stipa tenuissima|G|LLLLLM|1.5-2
chives|Allium schoenoprasum|H|=M|0.5-1
lemon verbena|Aloysia triphylla|H|LLLLLL|3-5
dill|Anethum graveolens|H|=M|1-1.5
tarragon;Mexican tarragon|Tagetes lucida|H|MMMMMM|1-2
chamomile;Roman chamomile|Chamaemelum nobile|H|LMMM??|1-1.5
cilantro;coriander;Chinese parsley|Coriandrum sativum|H|=M|0.5-1
lemongrass|Cymbopogon citratus|H|MMMM??|2-3
fennel;bronze fennel|Foeniculum vulgare|H|LMMM??|1.5-3
lemon balm|Melissa officinalis|H|MMM???|1.5-2
basil;sweet basil|Ocimum basilicum|H|=M|1-1.5
oregano;marjoram;dittany|Origanum spp.|H|MMLL??|1-3w
parsley|Petroselinum crispum|H|=M|0.75-1
rue|Ruta graveolens|H|MMLM??|2-3
garden sage;sage;kitchen sage|Salvia officinalis|H|LMMMMM|2-3
clary sage|Salvia sclarea|H|LMMM??|2-3
winter savory;savory|Satureja montana|H|=L|1-1.5
feverfew|Tanacetum parthenium|H|LLMM??|1-1.5
thyme|Thymus spp.|H|LMMMMM|1-1.5
kiwi;kiwifruit;Chinese gooseberry|Actinidia deliciosa|V|HHHH//|10-20
chocolate vine;fiveleaf akebia|Akebia quinata|V|MMMM//|6-10
cross vine|Bignonia capreolata|V|MMMMMM|6-10
bougainvillea;paper flower|Bougainvillea spp.|V|LLLL/M|8-15
trumpet creeper;trumpet vine|Campsis spp.|V|LLMMMM|6-10
clematis|Clematis hybrids|V|MMMHMM|3-6
creeping fig;climbing fig|Ficus pumila|V|MMMMMM|6-10
Carolina jessamine;yellow jessamine|Gelsemium sempervirens|V|LLMMMM|6-10
English ivy;ivy|Hedera helix|V|MMLMMM|5-10
hops|Humulus lupulus|V|LM/H??|5-8
climbing hydrangea|Hydrangea anomala petiolaris|V|MH/H//|6-10
pink jasmine;jasmine|Jasminum polyanthum|V|MMMM/M|6-10
Japanese honeysuckle|Lonicera japonica|V|MMLLMM|6-10
trumpet honeysuckle;coral honeysuckle|Lonicera sempervirens|V|MM?MMM|5-8
mandevilla;dipladenia;rocktrumpet|Mandevilla cvs.|V|M/MH/H|3-6
Virginia creeper;woodbine|Parthenocissus quinquefolia|V|MMMMMM|8-15
Boston ivy|Parthenocissus tricuspidata|V|LMMMMM|8-15
passion vine;passionflower;passion fruit|Passiflora spp.|V|MMMM/M|6-10
climbing rose;rambling rose|Rosa hybrids (climbing)|V|MMMMHH|6-10
Lady Banks rose|Rosa banksiae|V|LLMMMM|8-15
potato vine|Solanum laxum|V|MMMM/M|6-10
cape honeysuckle|Tecomaria capensis|V|MMMMMM|6-10
black-eyed Susan vine|Thunbergia alata|V|M/MMMM|3-6
star jasmine;Confederate jasmine|Trachelospermum jasminoides|V|MMMMMM|5-10
wisteria|Wisteria spp.|V|MMMMMM|8-15
ornamental onion;allium|Allium spp.|B|MMMM//|0.5-1
naked lady;belladonna lily|Amaryllis belladonna|B|VVVVLL|2-2w
poppy anemone|Anemone coronaria|B|LM?V??|0.5-0.75
caladium;angel wings|Caladium bicolor|B|//HH//|1-2
canna;canna lily|Canna spp.|B|MMMMMM|1.5-2
elephant's ear;taro|Colocasia spp.|B|HHHH??|3-5
crinum lily;spider lily|Crinum spp.|B|MMMMM?|2-4
crocus|Crocus vernus|B|=L|0.25-0.5
florist's cyclamen;cyclamen|Cyclamen persicum|B|LMML//|0.75-1
dahlia|Dahlia spp.|B|MMMH//|1.5-3
pineapple lily|Eucomis bicolor|B|M?M???|1-2
freesia|Freesia spp.|B|VMLVLM|0.5-0.75
snowdrop|Galanthus nivalis|B|=L|0.25-0.5
gladiolus;gladiola;sword lily|Gladiolus hybrids|B|MMMM//|0.5-1
amaryllis|Hippeastrum spp.|B|MMMM??|1-1.5
hyacinth|Hyacinthus spp.|B|MM/?MM|0.5-0.75
spring star flower|Ipheion uniflorum|B|LLLL??|0.5-0.75
Dutch iris|Iris x hollandica|B|MM?VMM|0.5-0.75
summer snowflake|Leucojum aestivum|B|MLLM??|0.75-1
lily;Asiatic lily;Oriental lily|Lilium hybrids|B|MMMMMM|1-1.5
grape hyacinth|Muscari macrocarpum|B|VVVVMM|0.25-0.5
daffodil;narcissus;jonquil|Narcissus spp.|B|VVVVLL|0.5-1
tuberose|Polianthes tuberosa|B|MMMMLL|1-1.5
Persian buttercup;ranunculus|Ranunculus spp. (winter growing)|B|LM/VMM|0.75-1
squill;scilla|Scilla siberica|B|=L|0.25-0.5
tulip|Tulipa hybrids|B|=L|0.25-0.5
rain lily;zephyr lily|Zephyranthes candida|B|MLMLLM|0.5-1
floss flower;ageratum|Ageratum houstonianum|A|=M|0.5-1
angelonia;summer snapdragon|Angelonia angustifolia|A|?/M???|1-1.5
snapdragon|Antirrhinum majus|A|=M|0.75-1
wax begonia;bedding begonia;begonia|Begonia semperflorens|A|MMMM/?|0.75-1
English daisy;bellis|Bellis perennis|A|MMMM//|0.5-0.75
ornamental cabbage;ornamental kale|Brassica oleracea|A|=M|1-1.5
calendula;pot marigold|Calendula officinalis|A|=M|1-1.5
million bells;calibrachoa|Calibrachoa cvs.|A|MMMMM?|1-2
Madagascar periwinkle;annual vinca|Catharanthus roseus|A|MMMMM/|1-1.5
cockscomb;celosia|Celosia argentea|A|=M|0.75-1
bachelor's button;cornflower|Centaurea cyanus|A|=L|0.75-1
spider flower;cleome|Cleome hassleriana|A|=M|1.5-2
coleus;painted nettle|Coleus scutellarioides|A|=M|1-2
larkspur|Consolida ajacis|A|=M|0.75-1
cosmos;Mexican aster|Cosmos bipinnatus|A|=M|1-2
sunflower|Helianthus annuus|A|=M|1-2
strawflower|Helichrysum bracteatum|A|LLMM//|1-1.5
common heliotrope;heliotrope|Heliotropium arborescens|A|MMMM??|1-2
impatiens;busy Lizzie|Impatiens walleriana|A|=H|1-1.5
morning glory|Ipomoea tricolor|A|=M|1-3
sweet potato vine|Ipomoea batatas|A|=M|2-4
sweet pea|Lathyrus odoratus|A|=M|0.5-1
edging lobelia;lobelia|Lobelia erinus|A|=M|0.5-1
sweet alyssum;alyssum|Lobularia maritima|A|=M|0.75-1.5
stock|Matthiola incana|A|=M|0.75-1
four o'clock;marvel of Peru|Mirabilis jalapa|A|VLVLMM|2-3
nemesia|Nemesia fruticans|A|MHM???|0.75-1
flowering tobacco;nicotiana|Nicotiana sylvestris|A|MMML??|1.5-2
love-in-a-mist;nigella|Nigella damascena|A|=M|0.75-1
Iceland poppy|Papaver nudicaule|A|=M|0.75-1
geranium;zonal geranium;pelargonium|Pelargonium x hortorum|A|LLMM//|1-1.5
ivy geranium;ivy-leaf pelargonium|Pelargonium peltatum|A|LMMM//|1-3
pentas;Egyptian star flower|Pentas lanceolata|A|L/M?//|1-2
petunia|Petunia hybrids|A|=M|1-2
portulaca;moss rose|Portulaca grandiflora|A|=L|0.75-1
scarlet sage;bedding salvia;annual salvia|Salvia splendens|A|=M|0.75-1
mealycup sage;blue salvia|Salvia farinacea|A|MMMMMM|1-1.5
fan flower;scaevola|Scaevola aemula|A|LLMM//|1-2
bacopa;sutera|Sutera cordata|A|MHMM??|1-2
French marigold;marigold|Tagetes patula|A|=M|0.75-1
nasturtium|Tropaeolum majus|A|=M|1-3
garden verbena;verbena|Verbena hybrids|A|LLMMMM|1-2
pansy;viola;heartsease|Viola x wittrockiana|A|=M|0.5-0.75
zinnia|Zinnia elegans|A|=M|0.75-1
century plant;agave|Agave americana|U|VVVVVV|4-8
aeonium;tree houseleek|Aeonium spp.|U|LLLL//|1-2
aloe;aloe vera|Aloe spp.|U|LLLL/L|1-3
jade plant;crassula;money plant|Crassula spp.|U|LLLL/?|1-3
ice plant|Delosperma spp.|U|LLLL/L|1-2
echeveria;Mexican hens and chickens|Echeveria spp.|U|LLLL/?|0.5-1
barrel cactus|Echinocactus spp.|U|VVVL/L|1-2
crown of thorns|Euphorbia milii|U|/LLL/L|1-2
red yucca;hesperaloe|Hesperaloe parviflora|U|LLVLLL|4-6w
autumn stonecrop;tall sedum;ice plant sedum|Hylotelephium spp.|U|LLLL??|1.5-2
kalanchoe;flaming Katy|Kalanchoe spp.|U|LLLL/M|1-1.5
prickly pear;cactus;opuntia|Opuntia spp.|U|VVVVVV|3-6
stonecrop;sedum|Sedum spp.|U|LLLL//|1-2
hens and chicks;houseleek;sempervivum|Sempervivum spp.|U|LLLL??|0.5-1
asparagus fern|Asparagus aethiopicus|I|MMMMMM|2-3
cast iron plant;aspidistra|Aspidistra elatior|I|LLMMMM|1-2
bird's nest fern|Asplenium nidus|I|MMMH//|1.5-2
ponytail palm|Beaucarnea recurvata|I|L/LL?M|2-3
parlor palm;chamaedorea|Chamaedorea spp.|I|//HH//|2-3
spider plant;airplane plant|Chlorophytum comosum|I|LLLM/M|1-2
grape ivy|Cissus alata|I|M/MM/M|2-3
clivia;bush lily|Clivia miniata|I|MMLM//|1.5-2
ti plant;cordyline|Cordyline fruticosa|I|M/H///|1.5-2
sago palm|Cycas revoluta|I|MMMMMM|2-4
dieffenbachia;dumb cane|Dieffenbachia seguine|I|=M|1.5-2
dracaena;dragon plant|Dracaena cvs.|I|//M///|1.5-2
pothos;devil's ivy|Epipremnum aureum|I|=M|1-2
weeping fig;benjamin fig|Ficus benjamina|I|//M//M|2-4
rubber plant;rubber tree|Ficus elastica|I|//MM//|2-4
fiddle-leaf fig|Ficus lyrata|I|//M///|2-3
fuchsia;hanging fuchsia|Fuchsia hybrids|I|MMHH//|1-2
wax plant;hoya|Hoya carnosa|I|M/MM//|1-2
prayer plant|Maranta leuconeura|I|=M|1-1.5
Swiss cheese plant;monstera;split-leaf philodendron|Monstera deliciosa|I|//MM//|2-4
Boston fern|Nephrolepis exaltata|I|MMMMMM|2-3
peperomia|Peperomia obtusifolia|I|=M|0.75-1
philodendron;tree philodendron|Philodendron bipinnatifidum|I|MMMM/M|2-4
Swedish ivy|Plectranthus verticillatus|I|M/MM??|1-2
lady palm|Rhapis excelsa|I|//MM//|2-4
African violet|Saintpaulia ionantha|I|=M|0.75-1
snake plant;mother-in-law's tongue;sansevieria|Sansevieria spp.|I|//LL/M|1-2
umbrella plant;schefflera|Schefflera arboricola|I|//MH//|2-3
peace lily;spathiphyllum|Spathiphyllum spp.|I|//H//M|1-2
inch plant;wandering dude|Tradescantia fluminensis|I|M/MM/M|1-2
`,
};

/** Other words for the crops of FAO-56, by the crop's id: from memory. */
export const CROP_NAMES: Names = {
  en: `
broccoli|calabrese;cauliflower
cabbage|kale;brussels sprouts;collard greens;bok choy;kohlrabi
carrots|carrot
lettuce|salad greens;romaine;chard;silverbeet;arugula;rocket
spinach|leaf spinach
radish|radishes
onion-green|scallion;spring onion;green onion;leek
onion-dry|onion;shallot;garlic
eggplant|aubergine;brinjal
sweet-pepper|bell pepper;capsicum;chili;jalapeno;chilli pepper;paprika
tomato|tomatoes;cherry tomato
cucumber|gherkin;cucumbers
pumpkin-winter-squash|pumpkin;winter squash;butternut;acorn squash
squash-zucchini|zucchini;courgette;summer squash;marrow
watermelon|melon;cantaloupe
beets|beetroot;beet
potato|potatoes;spud
beans-green|green beans;runner beans;string beans;French beans;snap beans;pole beans
peas-fresh|peas;mangetout;snow peas;sugar snap peas
sweet-corn|corn;maize;corn on the cob
strawberries|strawberry
asparagus|asparagus
mint|peppermint;spearmint
bush-berries|blueberry;raspberry;blackberry;gooseberry;currant;bramble
grapes-table|grape;grapevine;vine
apple-cherry-pear|apple;pear;cherry tree
peach-stone-fruit|peach;plum;apricot;nectarine
citrus|lemon;orange;lime;grapefruit;mandarin;kumquat
turf-cool-season|lawn;grass lawn;fescue lawn;ryegrass;bluegrass lawn
turf-warm-season|Bermuda grass;zoysia lawn;buffalo grass lawn
`,
};

/** What people say behind a plant's name without its being a part of it: words apart by a space. */
export const KIND_WORDS: Names = { en: 'bush hedge plant shrub tree vine flower' };
