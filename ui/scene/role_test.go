package scene_test

import (
	"testing"

	"lidmark/ui/scene"
)

func TestConditionRolesAreDistinctAndCounted(t *testing.T) {
	seen := map[scene.Role]string{scene.Orange: "orange"}
	for _, c := range append(scene.Conditions(), scene.Mated) {
		for what, r := range map[string]scene.Role{"fill": c.Fill(), "line": c.Line(), "letter": c.Letter()} {
			if r == scene.None {
				if c != scene.Empty || what != "fill" {
					t.Errorf("%v has no role for its %s", c, what)
				}
				continue
			}
			if other, ok := seen[r]; ok {
				t.Errorf("%v: its %s has the role of %s", c, what, other)
			}
			if int(r) >= scene.RoleCount {
				t.Errorf("%v: role %d of its %s is not below RoleCount %d", c, r, what, scene.RoleCount)
			}
			seen[r] = c.String() + " " + what
		}
	}
}

func TestTenConditionsHaveTenLetters(t *testing.T) {
	all := scene.Conditions()
	letters := map[string]bool{}
	for _, c := range all {
		letters[c.Sign()] = true
	}
	if len(all) != 10 || len(letters) != 10 {
		t.Errorf("%d conditions with %d letters, want 10 and 10", len(all), len(letters))
	}
}
