-- The text that was digested for a place in a starting order, with the names as they were in the draw: a name may be
-- mended later, and everybody must still be able to repeat the draw.
alter table start_position add column ticket_text varchar(1000) default '' not null;
