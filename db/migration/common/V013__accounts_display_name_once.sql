-- Whoever stands on the record is known there by the display name, so no two may share one.
alter table person add constraint person_display_name_once unique (display_name);
