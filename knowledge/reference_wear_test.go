package knowledge

// wearAdapters serves the reference cases of the subject wear.
var wearAdapters = map[string]adapter{
	"sleeve_geometry": same("sleeve_geometry"),
}
