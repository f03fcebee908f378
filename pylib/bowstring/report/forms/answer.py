"""The whole answer's form: its keys, in the order in which they stand."""

from typing import TypedDict, final

from bowstring.report.forms.accuracy import AccuracyPart
from bowstring.report.forms.advice import AdvicePart, MethodRow
from bowstring.report.forms.arc import (
    ArcMeasures,
    ArcTexts,
    EndsPart,
    FitPart,
    GivenRow,
    OffsetPart,
    ReadingRow,
    TieRow,
)
from bowstring.report.forms.build import BuildRow, LinePart
from bowstring.report.forms.build_boards import BoardsPart
from bowstring.report.forms.build_edges import EdgesPart
from bowstring.report.forms.build_grades import GradesPart
from bowstring.report.forms.build_joints import JointsPart
from bowstring.report.forms.build_lined import (
    LinedBoards,
    LinedEdges,
    LinedGrades,
    LinedJoints,
    LinedPart,
    LinedPour,
    LinedSheet,
)
from bowstring.report.forms.build_pour import PourPart
from bowstring.report.forms.cards import CardRow, LocatedPart, WayOutRow
from bowstring.report.forms.checks import CheckRow, MistakeRow
from bowstring.report.forms.got import GotRow
from bowstring.report.forms.halving import LevelRow
from bowstring.report.forms.in_dig import InDigPart
from bowstring.report.forms.read import FarChecks, ReadPart
from bowstring.report.forms.results import GapPart, RoundingPart, RulePart, StickPart
from bowstring.report.forms.site import SitePart
from bowstring.report.forms.stakeline import OnLinePart
from bowstring.report.forms.stakes import PlaceRow, StakeRow
from bowstring.report.forms.steps import StepRow, StepTable


@final
class Answer(TypedDict):
    """What ``bowstring.answer`` returns; metres and degrees, see the form of each part.

    Attributes:
        mark: the tape's mark; side: ``left`` or ``right``, for somebody at A who faces B,
            ``None`` where it isn't known; hand: the sentence that says it.
        tolerance: metres, ``None`` without one.
        method_said: whether the job named the method; otherwise it is the advised one.
        levels: how often the arc is halved, or would be; halve_first: before ordinates are taken; parallel:
            metres from the chord of the string that these ordinates are from, ``None`` for any other way.
        ties: by end, none of an end that has none.
        arc: as drawn (over the found chord, where that was taken: ``held``); staked: on which the stakes stand.
        given: beside the arc, where there are more than two; fit: ``None`` where no chord was found.
        got: where stakes that were set already really stand, one row for each of the job's.
        marks: every mark that the steps and the checks use.
        located: the locate ticket, as far as it's written down.
        cards: the steps as they are worked, one at a time, with what comes before and after them.
        line: along which is built; edges, boards, joints, grades, pour: ``None`` as long as something has to be said
            first, and of a line of several pieces in short, the rest is in lined; build: a row for each of those, its
            conclusion first; lined, lined_sheet: ``None`` for an arc alone.
        far_checks: what proves a pad's far corners, and what was read there; no row of any other slab.
        second_pass: what the cards of the forms are of, in order, none as long as there is no slab to build;
            form_cards: those cards, which follow ``cards``, numbered by themselves.
        in_dig: stakes that the dig would take, ``None`` where it takes none or nothing says where it is.
        stops: those of ``cautions`` that have to be settled before anybody builds; ways_out: what settles each.
    """

    version: str
    title: str
    note: str
    unit: str
    mark: str
    side: str | None
    hand: str
    ends: EndsPart
    drawn_to: str | None
    driven: str
    start: str
    tolerance: float | None
    tolerance_shown: str | None
    levels: int
    method: str
    method_said: bool
    halve_first: int
    parallel: float | None
    ties: dict[str, list[TieRow]]
    readings: list[ReadingRow]
    arc: ArcMeasures
    staked: ArcMeasures
    arc_shown: ArcTexts
    staked_shown: ArcTexts
    offset: OffsetPart | None
    on_line: OnLinePart
    given: list[GivenRow]
    fit: FitPart | None
    held: bool
    halving: list[LevelRow]
    gap: GapPart
    rule: RulePart
    rounding: RoundingPart
    stakes: list[StakeRow]
    marks: list[PlaceRow]
    steps: list[StepRow]
    located: LocatedPart
    cards: list[CardRow]
    tables: list[StepTable]
    square: list[str]
    checks: list[CheckRow]
    got: list[GotRow]
    read: ReadPart
    mistakes: list[MistakeRow]
    stick: StickPart
    accuracy: AccuracyPart
    methods: list[MethodRow]
    advice: AdvicePart
    warnings_top: list[str]
    stops: list[str]
    ways_out: list[WayOutRow]
    cautions: list[str]
    site: SitePart
    line: LinePart
    edges: EdgesPart | LinedEdges | None
    boards: BoardsPart | LinedBoards | None
    joints: JointsPart | LinedJoints | None
    grades: GradesPart | LinedGrades | None
    pour: PourPart | LinedPour | None
    build: list[BuildRow]
    lined: LinedPart | None
    lined_sheet: LinedSheet | None
    far_checks: FarChecks
    second_pass: list[str]
    form_cards: list[CardRow]
    in_dig: InDigPart | None
    notes: list[str]
