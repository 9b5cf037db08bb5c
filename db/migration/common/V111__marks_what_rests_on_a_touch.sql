-- A notice to the panel of what the clock found goes with the touch of the clock that it rests on.
alter table remark add column touch timestamp(3) with time zone;
