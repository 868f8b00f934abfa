package main

import "github.com/spf13/cobra"

const formats = `Job files, rulebooks and the JSON that boremend writes.

A JOB FILE says what was found at each worn bore of one visit:

  job: HB-1042
  about: Harbour reach stacker, boom foot
  invented: true                 # demo data says so
  units: mm                      # unit of lengths written without one; or inch
  facts: {material: cast_steel_weldable, shock: moderate}   # hold for every bore
  bores:
    - bore: left ear
      facts: {finish_bore: 110 mm, worn_max: 114.2 ±0.05 mm, edge_distance: unknown}
      readings: [{depth: 10 mm, clock: 0, diameter: 113.9 mm}]
      as_bored: []               # the same form, after the cut
      photos: [{file: left-ear.jpg, shows: the worn side}]   # also beside job:

Photographs are JPEG or PNG files beside the job file or in folders below it. The
papers show them upright and small, without place, time or camera.

A job, or a bore, may say what it knows of money, in the currency of the rates:

  prices: {part_price: 4200, downtime_cost: 180}   # a new part; an hour of standing

RATES (rates.yaml, beside a rulebook or named with price --rates) say what work takes
and costs. They are the shop's own, and no part of the rulebook or its SHA-256:

  title: Our rates
  edition: "3"
  date: 2026-11-25
  currency: USD
  shift: 10 h                    # working hours in a day
  materials_markup: 15 %         # may be left out, and so may downtime_cost: 150
  stock_allowance: 6 mm          # stock for a sleeve is larger by this
  lathe_per_hour: 400 cm3        # metal turned off in an hour
  rates: [{rate: field, price: 105, means: one machinist on site}]
  items:
    - {item: weld, step: weld, means: arc and chipping, for: [welds], per: welding_hour,
       hours: [0.7 h, 0.9 h, 1.5 h], unknown: [1 h, 3 h, 6 h], rate: field, crew: 1,
       source: our own records, trust: usual}
  materials:
    - {material: filler, means: wire, for: [welds], per: filler_kg, amount: [1, 1.05, 1.2],
       unit: kg, price: 9, source: our own records, trust: usual}
  notes: [{for: [refer], says: What the maker asks for is in no figure.}]

hours and amount are [low, likely, high] for each one of what per counts (price
--counts); unknown is the whole range where the count is not known. for names methods
and groups, all, or replacement. waits: yes is waiting, stands: no leaves the machine
to its work.

Sizes are written as 22 mm, 7/8 in, 1-1/4 in, 0.875 in, 9 thou, 22 ±0.5 mm; forces
as 310 kN; temperatures as 12 degC or 54 degF. Any fact may be unknown.

A WORKED CASE is a job file that also says what is expected, bore by bore:

  expect:
    left ear:
      advice: [sleeve_shoulder]          # any one of these
      may_stand: [sleeve_bolt_capture]   # may come second
      no_go: [weld_and_bore]             # ruled out or open
      not_advised: [oversize_pin]        # may stand, never first
      provisional: false
      narrow: false                      # true: narrow or touchy is said
      cautions: [k-press-ejection]       # shown; no_cautions: not shown
      holds: [room-for-shoulder]         # rules that hold; fails: rules that fail
      left_open: [no-bar]                # rules that are unknown and leave it open,
      until_known: [second-signature]    #   count as holding until it is known,
      not_checked: [maker-forbids]       #   or are passed over
      verdicts: {weld_and_bore: no_go}   # go, conditional, no_go or open
      points: {weld_and_bore: 2}         # of what is known; [1, 3] for least and most
      leans: {weld_and_bore: {easy-steel: 2}}          # rules and their points
      ruled_out_by: {weld_and_bore: [no-hot-work]}     # among others
      demands: {weld_and_bore: [strongback]}           # among others
      worked_out: {sleeve_bore: 90 mm}   # to the last digit written

Nothing that is left out is checked.

A RULEBOOK is a folder: rulebook.yaml, facts.yaml, limits.yaml, methods.yaml, rules/*.yaml
and, if there are any, cautions.yaml. An OVERLAY is a folder laid over another rulebook;
it may lack every file but the first, and holds only what is otherwise (boremend help rules):

  rulebook.yaml  title, edition, over: house or the way to another folder,
                 over_edition: "1" (the edition that was read), narrow, fallback, steps
                 (further ones), off: [{rule, because, was: its condition there}]
  limits.yaml    {limit, is, was, source, means, trust} sets a limit from below otherwise:
                 was is its value there. Without was, and with means, it is a new limit.
  facts.yaml     {fact, from, was} works a fact from below out in another way; others are new
  methods.yaml, cautions.yaml, rules/*.yaml    new entries, under names of their own

Where a was or over_edition is no longer so, rulebook check says so. The SHA-256 covers
the overlay and all that it lies over.

JSON (--format json). Numbers are in mm, mm2, N, MPa, degC, N*m, HV, HBW, s, kg and
kJ/mm, each beside its unit; texts are in the units of the reader.

  advise JOB   {format, version (of the program), job, about, invented, units: mm|inch
               (of the texts), rulebook: {title, edition, sha256, over [{title,
               edition}]}, bores: [...]}
               a bore: bore, advice {method, title, plain, verdict, points, lead,
               runner_up, tie, narrow, provisional, touchy}, methods [{method, title,
               verdict, points [least, most], points_known, reasons [{rule, effect,
               outcome, text, source, trust, points, of, file, line}], missing}],
               cautions [{caution, danger, text, refs, at, of, said_if, until_known}],
               missing, not_checked, facts {name: {value, unit, give_or_take, from,
               text, assumes}}. lead and runner_up are null when no other method
               stands. A caution with said_if depends on how the work is done.
               advice also has touchy_together (the facts can do it only together),
               touchy_unsure and provisional_unsure (it could not be settled within
               the effort allowed); without these, not touchy and not provisional are
               promises about all combinations. A bore may have nearest_tipping {fact,
               from_text, to_text, by_text, give_or_takes, method, title} and next_fact
               {fact, ask, minutes, weak}. of is the title of the rulebook whose
               rule or caution it is.
  advise --replay FILE  {job, saved and now {version, rulebook}, same, changed, bores:
               [{bore, same, changed, before and after (as advice), methods [{method,
               title, before {verdict, points}, after}], turned [{rule, effect, for,
               before, after: holds|unknown|absent, text}], demands {added, gone
               [{name, text}]}, cautions (the same), follows [{fact, before, after,
               unit, from_text, to_text}], strangers (methods that only one rulebook
               has)}]}. FILE is what advise --format json or explain --format json
               wrote, read strictly. same means to the letter. Exit status 1 when
               the advice, a demand or a caution is another one now, or when the same
               rulebook gives anything else.
  explain JOB  the same, and in each bore trace [{rule, outcome, effect, if, for, text,
               source, trust, of, file, line, atoms [{text, outcome, left {text, value,
               unit, shown}, right, margin, apart, replaced}]}] and worked_out [{fact,
               means, formula, numbers, value, unit, shown, assumed, of, replaced,
               atoms}]. replaced [{limit, shown, of, before, before_of}] are limits
               that an overlay sets otherwise.
  explain JOB --why A --not B  {job, rulebook, bores: [{bore, why, not, titles, advised,
               differences [{rule, effect, outcome, method, speaks: for|against|open,
               points, text, source, atoms}], forced, sufficient [{fact, value, unit,
               text}] or provided with unknown [fact], toward: [as tipping]}]}.
               sufficient forces the advice whatever all other facts are; provided does
               so as long as the facts in unknown stay unknown.
  tipping JOB  {job, rulebook, bores: [{bore, method, tipping: [{shifts [{fact, means,
               change: on_site|measure|fixed, from, from_text, to, to_text, unit,
               assumed, by, by_text, give_or_takes, against}], method, title, verdict}],
               pairs: [the same with two shifts]}]}. from is null while unknown. to is
               the turning value itself; to_text, typed in again, turns the advice too.
               against names a fact with which the new value cannot be true.
  whatif JOB FACT=VALUE ...  {job, rulebook, bores: [{bore, changes [{fact, before,
               after, unit, from_text, to_text}], before and after (as advice), changed,
               turned [{rule, effect, for, before, after, text}], methods [{method,
               title, before {verdict, points}, after}], follows, contrary}]}.
  sure JOB     {job, rulebook, bores: [{bore, method, touchy, touchy_together,
               touchy_unsure, moving [fact], how: certain|exact|sampled, draws, seed,
               shares [{method, title, share, error}]}]}.
  next JOB     {job, rulebook, bores: [{bore, method, outcomes [method], find [{fact,
               means, ask, how, tool, weak, known, minutes, best, mean, worst}],
               granted [{fact, minutes}], beside [the same], no_longer [fact],
               settled}]}. best, mean and worst count the outcomes left.
  size JOB     {job, rulebook, bores: [{bore, method, verdict, calculations: [as calc],
               refused: [{calculation, why}], cautions, as_bored {least, most, planned, unit,
               beyond, advice_again, still_stands}}]}. as_bored is there when the job
               has readings after the cut; the sheets are then for the bore as it is.
  price JOB    {job, currency, rates {title, edition, date, sha256, file, example},
               rulebook, total {price, hours, downtime, downtime_allowed,
               over_allowed, drivers} or null with why_no_total, bores: [{bore, advised, methods [{method, title, verdict,
               advised, price, hours, downtime, downtime_allowed, over_allowed,
               downtime_cost, price_and_downtime, lines, opinions, drivers [{item,
               means, bores, share}], widened [fact], notes}], unpriced [{method, title, verdict,
               why, needs}], replacement {available, part_price, part_price_from:
               given|ratio, ratio_stated, ratio_now, price, hours, downtime, drivers,
               downtime_cost, price_and_downtime, lines, notes, ask}, bores_in_line, listed_in_line}],
               draws, weak}. price, hours and downtime are {unit, low, likely, high, mean, sd,
               p50, p80, normal_p50, normal_p80}: money in the currency without tax,
               times in h. low and high are reached when all goes well or badly at
               once; p50 and p80 hold in half and in four of five of the seeded draws,
               normal_* by the normal approximation. A line: {item, step, means, sort:
               labour|waiting|material, per, count, count_unit, from, shared_by, each,
               hours, crew, amount, amount_unit, rate, price, cost, stands, source,
               trust, wide, needs}. A method is priced with the other bores as advised;
               what goes by the job or the line is shared in equal parts by the bores
               that need it. A wide line stands for a size that is not known.
  price --counts  {counts: [{count, means}]}: what items of rates can go by.
  sheet JOB    {job, rulebook, date, papers: [{for: customer|shop, title, subject, foot,
               mark, page, date, blocks: [one of {heading}, {para}, {list}, {checks},
               {pairs}, {table}, {note}, {answer}, {figure}, {photo}, {blanks},
               {signatures}, {working}, {page_break}]}], files}. Texts are as printed; an
               empty cell is there to be written in. files are those written: none with
               --format json, unless --out names a folder.
  batch SOURCE --to jsonl  a line for each bore: {job, rulebook, bore, advice and missing
               (as advise), demands [rule], cautions [{caution}], place {file, line}}, or
               errors [{file, line, column, says, remedy}] and no advice. With --quick
               there is no missing, and nothing in advice says provisional or touchy.
               Its CSV has the columns job, bore, advice, method, verdict, points,
               runner_up, lead, narrow, provisional, touchy, missing, demands, cautions,
               error, place, rulebook. touchy names the facts, or says no, or that it
               is not settled. place is the file and the line of the bore in it.
  calc NAME    {calculation, title, sources, validity, inputs {name: {value, unit}},
               outputs, lines [{symbol, means, formula, numbers, value, unit, source}],
               warnings}. value is a number, a word, or an array for a list.
  calc --list  {calculations: [{calculation, title, validity, sources, inputs [{name,
               kind, unit, means, list, choices, default}], outputs}]}
  rulebook schema  the JSON Schema itself; with --write {rulebook, schemas: [{file, for}]}
  rulebook check  {rulebook, facts, limits, methods, rules, cautions, findings [{kind,
               severity: wrong|doubtful|note, what: rule|fact|limit|method|caution|group,
               name, file, line, column, others [rule], says, witness [{fact, value,
               unit, text}]}], unsettled [{kind, what, name, file, line, column, asks}],
               stopped}. column is there when one comparison is meant. A witness is
               evaluated: these facts, the rest unknown. unsettled is what could be
               neither shown nor excluded; stopped means that Ctrl-C came first.
               Of an overlay also replaced [{limit, shown, of, before, before_of,
               file, line}], off [{rule, because, of, file, line}], moved [{file,
               line, column, says, remedy}] and below (findings of what it lies
               over, left out without --all).
  rulebook new  {folder, copy, rulebook, files}
  rulebook gaps   {rulebook, draws, done, seed, stopped, fallback, sent_to_fallback,
               kinds: [{kind: nothing_left|all_open|tie, count, share, error, groups:
               [{count, share, error, rules, methods, unknown, example}], groups_left_off,
               draws_left_off}]}. example is {facts: [{fact, value, unit, text, ordinary}],
               method, verdict, methods: [{method, title, verdict, points, start, reasons}]};
               facts that it does not name are unknown. error holds 19 times in 20.
  rulebook compare  {before: rulebook, after, edits: [{of, name, change: added|removed|edited,
               fields: [{field, before, after}]}], cases, space}. cases is {files, bores, done,
               stopped, changed: [{file, bore, changed: [advice|verdicts|demands|cautions],
               ...}], reworded: [{file, bore}], other_points, not_compared: [{under, file,
               line, column, says, remedy}]}; space is {draws, done, seed, stopped, unlike,
               changed, share, error, beside, near, near_changed, kinds: [{before, after, count,
               share, error, near, example: {facts, ...}}], kinds_left_off, draws_left_off}. ... stands for
               before and after {method, title, verdict, points}, turned [{rule, effect, for,
               before, after: holds|fails|unknown|absent, points_before, points_after,
               text_before, text_after, edited}], methods [{method, before, after}],
               demands and cautions [{name, method, before, after}], reworded, other_points.
  rulebook coverage  {rulebook, cases, unjudged, statements [{declares: rule|caution|fact,
               name, key: if|from|assume, text, file, line, holds, fails, unknown,
               comparisons [{text, holds, fails, unknown, held_and_decided,
               failed_and_decided}]}], blanks [{declares, name, key, file,
               line, comparison, number, want: holds|fails, decides}], stopped, drafts
               [{blanks, found, draft, was_there}]}. blanks is what no case exercises.
               The counts are of bores; unjudged bores expect nothing. comparison is
               empty for the whole condition; decides: it was seen, but never decided
               alone. drafts is there with --write.
  rulebook mutate  {rulebook, cases, edits, refused, tried, noticed, not_noticed,
               no_effect, score, stopped, failing [case], kinds [{kind, noticed,
               not_noticed, no_effect}], survivors [{declares, name, key, value,
               kind, old, new, file, line, pin [rule]}]}. score is noticed of all that
               were tried and are not shown to be without effect on every advice; of
               those only the sizing sheets may read something else. value is what would
               stand under key; without a key the declaration is taken away.

  intake       asks and saves, then writes what advise JOB would; the questions go to
               standard error. It keeps the comments of the job file, and writes an
               answer that nobody has as FACT: unknown.

EXIT STATUS  0 done; 1 a check fell short; 2 bad input or use; 3 a fault of the program.
Errors go to standard error, one a line: file:line:col: what is wrong (what would be right).
`

// formatsTopic is the help on files and JSON.
func (a *app) formatsTopic() *cobra.Command {
	return &cobra.Command{Use: "formats", Short: "Job files, JSON and exit status", Long: formats}
}
