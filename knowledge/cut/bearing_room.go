package cut

import "boremend/knowledge/worked"

// BearingRoomInputs are an ear and the space beside it.
type BearingRoomInputs struct {
	LengthMM  float64 `name:"length" symbol:"L" kind:"length" means:"length of the bore; for bores in line, from the first face to the last"`
	OverrunMM float64 `name:"tool_overrun" symbol:"o" kind:"length" default:"10 mm" means:"how far the tool runs out of each face"`
	GapMM     float64 `name:"gap" symbol:"g" kind:"length" default:"20 mm" means:"from there to the bearing: hand, rule and chips must get in"`
	BearingMM float64 `name:"bearing_width" symbol:"w" kind:"length" means:"width of bearing and mount along the bar"`
	NearMM    float64 `name:"room_near" symbol:"r_1" kind:"length" means:"free room beside the first face"`
	FarMM     float64 `name:"room_far" symbol:"r_2" kind:"length" means:"free room beside the last face"`
	DriveMM   float64 `name:"drive_length" symbol:"v" kind:"length" default:"0 mm" means:"what drive and feed need beyond the first bearing"`
}

// BearingRoomOutputs are what the set-up needs and the span that results.
type BearingRoomOutputs struct {
	NeedNearMM float64 `name:"need_near" symbol:"n_1" kind:"length" means:"room needed beside the first face, with the drive"`
	NeedFarMM  float64 `name:"need_far" symbol:"n_2" kind:"length" means:"room needed beside the last face"`
	SpanMM     float64 `name:"span" symbol:"S" kind:"length" means:"least span between the middles of the bearings"`
	BarMM      float64 `name:"bar_length" symbol:"B" kind:"length" means:"least length of the bar"`
	Verdict    string  `name:"verdict" choices:"fits,turn_round,near_too_short,far_too_short,both_too_short" means:"whether bearings and drive have room as planned; turn_round: with the drive at the other end"`
}

// BearingRoom computes the room that bearings and drive need, and the span that is
// then the least.
//
//	n_2 = o + g + w
//	n_1 = n_2 + v
//	S   = L + 2 (o + g) + w
//	B   = L + n_1 + n_2
//
// L is the bore, o the overrun of the tool, g the gap, w the width of a bearing, v
// the drive, r_1 and r_2 the room beside the faces [mm].
//
// Every millimetre of span counts three times in stiffness: mount the bearings as
// close as the hand allows. A bearing in the opposite ear may stand in for one
// outside.
//
// Validity: a bearing on each side; one end closed needs BarOverhung.
//
// Error: that of the tape.
//
// Source: geometry; overrun and gap are common practice, no source.
func BearingRoom(in BearingRoomInputs) (BearingRoomOutputs, error) {
	var c worked.Checks
	c.Between("length", in.LengthMM, 1, 2e4)
	c.Between("tool_overrun", in.OverrunMM, 0, 500)
	c.Between("gap", in.GapMM, 0, 2000)
	c.Between("bearing_width", in.BearingMM, 1, 1000)
	c.Between("room_near", in.NearMM, 0, 1e5)
	c.Between("room_far", in.FarMM, 0, 1e5)
	c.Between("drive_length", in.DriveMM, 0, 5000)
	if err := c.Err(); err != nil {
		return BearingRoomOutputs{}, err
	}
	out := BearingRoomOutputs{NeedFarMM: in.OverrunMM + in.GapMM + in.BearingMM}
	out.NeedNearMM = out.NeedFarMM + in.DriveMM
	out.SpanMM = in.LengthMM + 2*(in.OverrunMM+in.GapMM) + in.BearingMM
	out.BarMM = in.LengthMM + out.NeedNearMM + out.NeedFarMM
	near, far := in.NearMM >= out.NeedNearMM, in.FarMM >= out.NeedFarMM
	switch {
	case near && far:
		out.Verdict = "fits"
	case in.FarMM >= out.NeedNearMM && in.NearMM >= out.NeedFarMM:
		out.Verdict = "turn_round"
	case near:
		out.Verdict = "far_too_short"
	case far:
		out.Verdict = "near_too_short"
	default:
		out.Verdict = "both_too_short"
	}
	return out, nil
}

// BearingRoomCalculation is the catalogue entry of BearingRoom.
func BearingRoomCalculation() worked.Calculation {
	const geometry = "geometry"
	return worked.Define("bearing_room", BearingRoom, worked.Page[BearingRoomInputs, BearingRoomOutputs]{
		Title:    "Room for bearings and drive, and the span",
		Sources:  []string{"geometry; overrun and gap: common practice, no source"},
		Validity: "a bearing on each side of the bore",
		Formulas: []worked.Formula[BearingRoomInputs, BearingRoomOutputs]{
			{Symbol: "n_2", Is: "o + g + w", Source: geometry},
			{Symbol: "n_1", Is: "n_2 + v", Source: geometry},
			{Symbol: "S", Is: "L + 2 * (o + g) + w", Source: geometry},
			{Symbol: "B", Is: "L + n_1 + n_2", Source: geometry},
		},
		Warnings: func(_ BearingRoomInputs, out BearingRoomOutputs) []string {
			switch out.Verdict {
			case "fits":
				return nil
			case "turn_round":
				return []string{"As planned there is no room; with the drive at the other end there is."}
			}
			return []string{"There is no room for a bearing on each side: a bearing in the opposite ear, a narrower one, or an overhung bar (bar_overhung)."}
		},
		Example: map[string]string{"length": "80 mm", "bearing_width": "60 mm", "room_near": "400 mm", "room_far": "150 mm", "drive_length": "220 mm"},
	})
}
