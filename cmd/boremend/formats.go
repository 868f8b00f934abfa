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

Sizes are written as 22 mm, 7/8 in, 1-1/4 in, 0.875 in, 9 thou, 22 ±0.5 mm; forces
as 310 kN; temperatures as 12 degC or 54 degF. Any fact may be unknown.

JSON (--format json). Numbers are in mm, mm2, N, MPa, degC, N*m, HV, HBW, s, kg and
kJ/mm, each beside its unit; texts are in the units of the reader.

  advise JOB   {job, about, invented, rulebook: {title, edition, sha256}, bores: [...]}
               a bore: bore, advice {method, title, plain, verdict, points, lead,
               runner_up, tie, narrow, provisional, touchy}, methods [{method, title,
               verdict, points [least, most], points_known, reasons [{rule, effect,
               outcome, text, source, trust, points, file, line}], missing}],
               cautions [{caution, danger, text, refs, at, said_if, until_known}],
               missing, not_checked, facts {name: {value, unit, give_or_take, from,
               text, assumes}}. lead and runner_up are null when no other method
               stands. A caution with said_if depends on how the work is done.
  explain JOB  the same, and in each bore trace [{rule, outcome, effect, if, for, text,
               source, trust, file, line, atoms [{text, outcome, left {text, value,
               unit, shown}, right, margin, apart}]}] and worked_out [{fact, means,
               formula, numbers, value, unit, shown, assumed, atoms}].
  size JOB     {job, rulebook, bores: [{bore, method, verdict, calculations: [as calc],
               refused: [{calculation, why}], cautions, as_bored {least, most, planned, unit,
               beyond, advice_again, still_stands}}]}. as_bored is there when the job
               has readings after the cut; the sheets are then for the bore as it is.
  calc NAME    {calculation, title, sources, validity, inputs {name: {value, unit}},
               outputs, lines [{symbol, means, formula, numbers, value, unit, source}],
               warnings}. value is a number, a word, or an array for a list.
  calc --list  {calculations: [{calculation, title, validity, sources, inputs [{name,
               kind, unit, means, list, choices, default}], outputs}]}
  rulebook check  {rulebook, facts, limits, methods, rules, cautions}

EXIT STATUS  0 done; 1 a check fell short; 2 bad input or use; 3 a fault of the program.
Errors go to standard error, one a line: file:line:col: what is wrong (what would be right).
`

// formatsTopic is the help on files and JSON.
func (a *app) formatsTopic() *cobra.Command {
	return &cobra.Command{Use: "formats", Short: "Job files, JSON and exit status", Long: formats}
}
